using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>A language that documents can be printed in.</summary>
/// <param name="Code">ISO 639-1 code.</param>
/// <param name="Name">Its own name.</param>
/// <param name="Origin">Where the statements come from.</param>
/// <param name="Apart">Where those come from that do not come from there, or are less sure.</param>
/// <param name="Official">The law's statements by code, word for word with the blanks that the law leaves to the supplier.</param>
/// <param name="Printed">Statements as printed: completed and chosen where the law leaves dots or a choice.</param>
/// <param name="Words">The documents' own words.</param>
/// <param name="Safety">Candle-safety messages by key.</param>
/// <param name="Figures">How it writes figures.</param>
/// <param name="Caution">The caution at the foot of a card.</param>
public sealed record Language(
    string Code,
    string Name,
    TextOrigin Origin,
    IReadOnlyDictionary<StatementCode, TextOrigin> Apart,
    IReadOnlyDictionary<StatementCode, string> Official,
    IReadOnlyDictionary<StatementCode, string> Printed,
    IReadOnlyDictionary<string, string> Words,
    IReadOnlyDictionary<string, string> Safety,
    FigureFormat Figures,
    string Caution
)
{
    /// <summary>Statements as printed where they protect the eyes alone.</summary>
    public IReadOnlyDictionary<StatementCode, string> ForEyes { get; init; } = new Dictionary<StatementCode, string>();

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

    private string? Whole(StatementCode code) => Official.GetValueOrDefault(code) is { } text ? StatementBlanks.LeftOut(text) : null;

    /// <summary>Where a statement's text comes from.</summary>
    public TextOrigin OriginOf(StatementCode code) => Apart.GetValueOrDefault(code) ?? Origin;
}
