using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>A safety data sheet in one language.</summary>
/// <param name="Language">Language of its headings and statements.</param>
/// <param name="Words">Words of the sheet.</param>
/// <param name="Product">Trade name.</param>
/// <param name="Format">Name of the format.</param>
/// <param name="Revision">Number of the revision.</param>
/// <param name="Revised">Day of the revision.</param>
/// <param name="Sections">The 16 sections.</param>
/// <param name="Duty">When it is due.</param>
/// <param name="LanguageNote">Which parts are not in its language, for its first page; null for none.</param>
/// <param name="Warnings">What keeps the sheet from being lawful as it stands.</param>
public sealed record SafetySheet(
    Language Language,
    SheetWords Words,
    string Product,
    string Format,
    int Revision,
    DateOnly Revised,
    IReadOnlyList<SheetSection> Sections,
    SheetDutyFinding Duty,
    string? LanguageNote,
    IReadOnlyList<string> Warnings
)
{
    /// <summary>The subsection with this number.</summary>
    public SheetSubsection? Find(string number) => Sections.SelectMany(s => s.Subsections).FirstOrDefault(s => s.Number == number);
}
