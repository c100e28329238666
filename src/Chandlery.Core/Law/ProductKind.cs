using Chandlery.Core.Declared;

namespace Chandlery.Core.Law;

/// <summary>
/// A kind of product: what must be declared of it, what is said of its safe use, and which papers are made. No law; each says where
/// its signs come from.
/// </summary>
public sealed record ProductKind
{
    /// <summary>The kind of a file that names none.</summary>
    public const string Usual = "container-candle";

    /// <summary>File name without its ending, by which declarations name it.</summary>
    public required string Id { get; init; }

    /// <summary>What it is called inside a sentence.</summary>
    public required string Name { get; init; }

    /// <summary>Solid or liquid.</summary>
    public required PhysicalState State { get; init; }

    /// <summary>Whether it burns with a flame of its own.</summary>
    public required bool Burns { get; init; }

    /// <summary>The sort that it belongs to.</summary>
    public ProductSort Sort =>
        Burns ? ProductSort.Burning
        : State == PhysicalState.Liquid ? ProductSort.Liquid
        : ProductSort.Warmed;

    /// <summary>Where it may be used.</summary>
    public required IReadOnlyList<CandleUse> UsedIn { get; init; }

    /// <summary>Parts that must be declared.</summary>
    public required IReadOnlyList<KindPart> Needs { get; init; }

    /// <summary>Parts that may be declared beside them.</summary>
    public required IReadOnlyList<KindPart> MayHave { get; init; }

    /// <summary>The IFRA category that is asked of certificates; null where the certificate says which, so that the product names it.</summary>
    public required string? IfraCategory { get; init; }

    /// <summary>Keys of what papers call it.</summary>
    public required KindNames Called { get; init; }

    /// <summary>Key of the heading of its cards.</summary>
    public required string Title { get; init; }

    /// <summary>Words of our own English texts that are others for it.</summary>
    public required LocalWords Words { get; init; }

    /// <summary>What its wax and its melt are called instead.</summary>
    public required LocalWords Parts { get; init; }

    /// <summary>Messages that are said only when something holds.</summary>
    public required IReadOnlyDictionary<string, MessageWhen> OnlyWhen { get; init; }

    /// <summary>Keys of the messages, by the place where they stand.</summary>
    public required IReadOnlyDictionary<MessageList, IReadOnlyList<string>> Messages { get; init; }

    /// <summary>Keys of the messages of a listing, in their order.</summary>
    public required IReadOnlyList<string> Listing { get; init; }

    /// <summary>Short names of the papers that are not made of it.</summary>
    public required IReadOnlyList<string> WithoutPapers { get; init; }

    /// <summary>Where its signs and messages come from.</summary>
    public required string Source { get; init; }

    /// <summary>Whether a part is needed or allowed.</summary>
    public bool Takes(KindPart part) => Needs.Contains(part) || MayHave.Contains(part);

    /// <summary>A sentence of our own on candles as it is said of this kind. Never for what others wrote: a maker may be called Candle.</summary>
    public string Say(string text) => Words.In(text);

    /// <summary>The same of a sentence that also speaks of wax and melt; never for names, for a substance may be called a wax.</summary>
    public string SayOfParts(string text) => Words.In(Parts.In(text));
}
