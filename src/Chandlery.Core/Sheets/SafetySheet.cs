using Chandlery.Core.Law;

namespace Chandlery.Core.Sheets;

/// <summary>When a safety data sheet is due.</summary>
public enum SheetDuty
{
    /// <summary>With the first delivery to a business.</summary>
    WithDelivery,

    /// <summary>When a business asks for it.</summary>
    OnRequest,

    /// <summary>Not at all.</summary>
    NotDue,
}

/// <summary>The duty with its reasons.</summary>
/// <param name="Duty">When the sheet is due.</param>
/// <param name="Reasons">Why, each with its clause.</param>
public sealed record SheetDutyFinding(SheetDuty Duty, IReadOnlyList<DutyClause> Reasons);

/// <summary>A part of a subsection.</summary>
public abstract record SheetBlock;

/// <summary>A paragraph.</summary>
/// <param name="Text">The text.</param>
/// <param name="Strong">Set in bold.</param>
public sealed record SheetText(string Text, bool Strong = false) : SheetBlock;

/// <summary>A table; a heading row only where <paramref name="Heads"/> has texts.</summary>
/// <param name="Widths">Shares of the width.</param>
/// <param name="Heads">Headings; empty for a list of pairs.</param>
/// <param name="Rows">Rows.</param>
public sealed record SheetTable(IReadOnlyList<int> Widths, IReadOnlyList<string> Heads, IReadOnlyList<IReadOnlyList<string>> Rows)
    : SheetBlock;

/// <summary>Pictograms in a row.</summary>
/// <param name="Codes">GHS codes.</param>
public sealed record SheetPictograms(IReadOnlyList<string> Codes) : SheetBlock;

/// <summary>A subsection; section 16 has one without a number of its own.</summary>
/// <param name="Number">Such as 2.1.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Blocks">Its contents; never empty.</param>
public sealed record SheetSubsection(string Number, string Title, IReadOnlyList<SheetBlock> Blocks);

/// <summary>A section.</summary>
/// <param name="Number">1 to 16.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Subsections">Its subsections.</param>
public sealed record SheetSection(int Number, string Title, IReadOnlyList<SheetSubsection> Subsections);

/// <summary>A safety data sheet in one language.</summary>
/// <param name="Language">Language of its headings and statements.</param>
/// <param name="Words">Words of the sheet.</param>
/// <param name="Product">Trade name.</param>
/// <param name="Format">Name of the format.</param>
/// <param name="Revision">Number of the revision.</param>
/// <param name="Revised">Day of the revision.</param>
/// <param name="Sections">The 16 sections.</param>
/// <param name="Duty">When it is due.</param>
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
    IReadOnlyList<string> Warnings
)
{
    /// <summary>The subsection with this number.</summary>
    public SheetSubsection? Find(string number) => Sections.SelectMany(s => s.Subsections).FirstOrDefault(s => s.Number == number);
}
