using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>A language that documents can be printed in.</summary>
public sealed record Language
{
    /// <summary>ISO 639-1 code.</summary>
    public required string Code { get; init; }

    /// <summary>Its own name.</summary>
    public required string Name { get; init; }

    /// <summary>Where the statements come from.</summary>
    public required TextOrigin Origin { get; init; }

    /// <summary>Where those come from that do not come from there, or are less sure.</summary>
    public required IReadOnlyDictionary<StatementCode, TextOrigin> Apart { get; init; }

    /// <summary>The law's statements by code, word for word with the blanks that the law leaves to the supplier.</summary>
    public required IReadOnlyDictionary<StatementCode, string> Official { get; init; }

    /// <summary>Statements as printed: completed and chosen where the law leaves dots or a choice.</summary>
    public required IReadOnlyDictionary<StatementCode, string> Printed { get; init; }

    /// <summary>The documents' own words.</summary>
    public required IReadOnlyDictionary<string, string> Words { get; init; }

    /// <summary>Candle-safety messages by key.</summary>
    public required IReadOnlyDictionary<string, string> Safety { get; init; }

    /// <summary>How it writes figures.</summary>
    public required FigureFormat Figures { get; init; }

    /// <summary>The caution at the foot of a card.</summary>
    public required string Caution { get; init; }

    /// <summary>Where its long words may be broken at a line's end.</summary>
    public WordBreaks Breaks { get; init; } = WordBreaks.None;

    /// <summary>Words that are others where it is printed.</summary>
    public LocalWords Local { get; init; } = LocalWords.None;

    /// <summary>Statements as printed where they protect the eyes alone.</summary>
    public IReadOnlyDictionary<StatementCode, string> ForEyes { get; init; } = new Dictionary<StatementCode, string>();

    /// <summary>The same language with other words of our own; the law's statements stay word for word.</summary>
    public Language With(LocalWords local) =>
        this with
        {
            Words = Words.ToDictionary(w => w.Key, w => local.In(w.Value)),
            Safety = Safety.ToDictionary(w => w.Key, w => local.In(w.Value)),
            Caution = local.In(Caution),
            Local = local,
        };

    /// <summary>The statement as printed; null when this language lacks it.</summary>
    /// <param name="code">Its code.</param>
    /// <param name="protects">
    /// What it protects, where its text leaves that to the supplier: of hands and eyes together the law's whole text speaks, and that
    /// is printed too where a language has no text for the eyes alone.
    /// </param>
    public string? Statement(StatementCode code, Protection protects = Protection.None) =>
        protects.HasFlag(Protection.Eyes)
            ? (protects == Protection.Eyes ? ForEyes.GetValueOrDefault(code) : null) ?? Whole(code)
            : Printed.GetValueOrDefault(code) ?? Whole(code);

    /// <summary>Whether there is a text of a statement.</summary>
    public bool Has(StatementCode code) => Printed.ContainsKey(code) || Official.ContainsKey(code);

    private string? Whole(StatementCode code) => Official.GetValueOrDefault(code) is { } text ? StatementBlanks.LeftOut(text) : null;

    /// <summary>Where a statement's text comes from.</summary>
    public TextOrigin OriginOf(StatementCode code) => Apart.GetValueOrDefault(code) ?? Origin;
}
