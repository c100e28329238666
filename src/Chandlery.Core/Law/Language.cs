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
    /// <summary>The statement as printed; null when this language lacks it.</summary>
    public string? Statement(StatementCode code) =>
        Printed.GetValueOrDefault(code) ?? (Official.GetValueOrDefault(code) is { } text ? StatementBlanks.LeftOut(text) : null);

    /// <summary>Where a statement's text comes from.</summary>
    public TextOrigin OriginOf(StatementCode code) => Apart.GetValueOrDefault(code) ?? Origin;
}
