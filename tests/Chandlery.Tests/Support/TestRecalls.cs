using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyFiles.Recalls;

namespace Chandlery.Tests.Support;

/// <summary>Batches that went out, for papers of a recall.</summary>
internal static class TestRecalls
{
    /// <summary>The words of a recall in a language for a kind.</summary>
    public static RecallWords Words(string code, string kind) =>
        new(TestLaw.Lawbook.Safety.Words.Find(code)!, TestLaw.Lawbook.Kinds.Find(kind)!, TestLaw.Lawbook.FindLanguage(code)!);

    /// <summary>A batch of a product, of which ten went to a shop.</summary>
    public static AffectedBatch Batch(Assessment a)
    {
        var batch = new Batch
        {
            Id = "b",
            Place = a.Candle.Place,
            Candle = new Reference(a.Id, a.Candle.Place),
            Code = "B-1",
            Poured = TestLaw.Today,
            Made = 12,
            WaxWeight = new Grams(1000),
            Oils = [],
            Extras = [],
            TopUp = null,
        };
        var dispatch = new Dispatch
        {
            Id = "d",
            Place = a.Candle.Place,
            Batch = new Reference("b", a.Candle.Place),
            On = TestLaw.Today,
            Pieces = 10,
            Country = "IE",
            ToWhom = ReceiverKind.Shop,
            Receiver = new Receiver("Gull and Sons", ["1 Quay", "Tarnvey"], null, null),
            Forgotten = null,
        };
        return new AffectedBatch(batch, a.Candle, "it is batch B-1", true, [dispatch]);
    }

    /// <summary>The same batch, sent to a person.</summary>
    public static Dispatch ToPerson(AffectedBatch batch) => batch.Dispatches[0] with { ToWhom = ReceiverKind.Person };
}
