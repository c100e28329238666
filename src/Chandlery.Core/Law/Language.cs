using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>A language that documents can be printed in.</summary>
/// <param name="Code">ISO 639-1 code.</param>
/// <param name="Name">Its own name.</param>
/// <param name="Source">Where the texts come from.</param>
/// <param name="Checked">How they were checked.</param>
/// <param name="IsVerified">True when the hazard statements were compared with an independent text.</param>
/// <param name="Official">The law's statements by code, verbatim.</param>
/// <param name="Printed">Statements as printed: completed and chosen where the law leaves dots or a choice.</param>
/// <param name="Words">The documents' own words.</param>
/// <param name="Safety">Candle-safety messages by key.</param>
/// <param name="Figures">How it writes figures.</param>
/// <param name="Caution">The caution at the foot of a card.</param>
public sealed record Language(
    string Code,
    string Name,
    string Source,
    string Checked,
    bool IsVerified,
    IReadOnlyDictionary<StatementCode, string> Official,
    IReadOnlyDictionary<StatementCode, string> Printed,
    IReadOnlyDictionary<string, string> Words,
    IReadOnlyDictionary<string, string> Safety,
    FigureFormat Figures,
    string Caution
)
{
    /// <summary>The statement as printed; null when this language lacks it.</summary>
    public string? Statement(StatementCode code) => Printed.GetValueOrDefault(code) ?? Official.GetValueOrDefault(code);
}
