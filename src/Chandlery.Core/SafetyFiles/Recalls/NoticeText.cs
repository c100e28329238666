using Chandlery.Core.Declared;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Recalls;

/// <summary>The notice of a recall in one language.</summary>
/// <param name="Language">Code of the language.</param>
/// <param name="Title">The headline.</param>
/// <param name="Name">Trade name of the candle.</param>
/// <param name="Parts">Headings with their sentences, in the order of the law's form.</param>
public sealed record NoticeText(
    string Language,
    string Title,
    string Name,
    IReadOnlyList<(string Heading, IReadOnlyList<string> Texts)> Parts
)
{
    /// <summary>File of the picture that stands in its first part; empty for none.</summary>
    public string PictureFile { get; init; } = "";

    /// <summary>The same with a picture in its first part.</summary>
    /// <param name="file">The picture's file.</param>
    /// <param name="caption">What must be said of it; empty for nothing.</param>
    public NoticeText WithPicture(string file, string caption)
    {
        (string heading, IReadOnlyList<string> texts) = Parts[0];
        return this with { PictureFile = file, Parts = [(heading, caption.Length == 0 ? texts : [.. texts, caption]), .. Parts.Skip(1)] };
    }

    /// <summary>Writes the notice for the batches of one candle.</summary>
    /// <param name="batches">Batches of one candle that a recall reaches; one at least.</param>
    /// <param name="maker">Who recalls.</param>
    /// <param name="hazard">What the danger is, in that language.</param>
    /// <param name="w">The words for its kind.</param>
    public static NoticeText Of(IReadOnlyList<AffectedBatch> batches, Maker maker, string hazard, RecallWords w)
    {
        List<Dispatch> sent = [.. batches.SelectMany(b => b.Dispatches).OrderBy(d => d.On)];
        var parts = new List<(string, IReadOnlyList<string>)>
        {
            (
                w["recallProduct"],
                [
                    batches[0].Candle.Name,
                    .. w.CalledBelowName,
                    Fill(w["recallBatch"], ("batches", string.Join(", ", batches.Select(b => b.Batch.Code).Distinct()))),
                ]
            ),
        };
        if (sent.Count > 0)
        {
            parts.Add((w["recallSold"], [Sold(sent, maker, w["recallSoldText"])]));
        }

        Party named = maker.Parties.MadeFor ?? new Party(maker.Name, maker.AddressLines, null, maker.Telephone, maker.Email ?? maker.Web);
        string contact = maker.Parties.ContactPoint ?? named.Electronic ?? "";
        parts.Add((w["recallDanger"], [hazard]));
        parts.Add((w["recallAction"], [w["recallStop"]]));
        parts.Add((w["recallRemedy"], [w["recallRemedyText"]]));
        parts.Add(
            (
                w["recallAsk"],
                [
                    $"{named.Name}, {string.Join(", ", named.AddressLines)}",
                    Fill(w["recallAskText"], ("contact", $"{contact}, {named.Telephone ?? maker.Telephone}")),
                ]
            )
        );
        parts.Add(("", [w["recallShare"]]));
        return new NoticeText(w.Code, w["recallTitle"], batches[0].Candle.Name, parts);
    }

    /// <summary>A sentence with its marks filled in.</summary>
    public static string Fill(string sentence, params IEnumerable<(string Mark, string Value)> values) =>
        values.Aggregate(sentence, (s, v) => s.Replace($"{{{v.Mark}}}", v.Value, StringComparison.Ordinal));

    // Shops are named, persons are not; countries by their codes, which are the same in every language.
    private static string Sold(List<Dispatch> sent, Maker maker, string sentence)
    {
        IEnumerable<string> shops = sent.Where(d => d.ToWhom == ReceiverKind.Shop).Select(d => d.Receiver?.Name).OfType<string>();
        return Fill(
            sentence,
            ("places", string.Join(", ", sent.Select(d => d.Country).Distinct().Order(StringComparer.Ordinal))),
            ("from", IsoDay.Plain(sent[0].On)),
            ("until", IsoDay.Plain(sent[^1].On)),
            ("sellers", string.Join(", ", shops.Prepend(maker.Name).Distinct()))
        );
    }
}
