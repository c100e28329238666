using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>A safety data sheet in one language.</summary>
public sealed record SafetySheet
{
    /// <summary>Language of its headings and statements.</summary>
    public required Language Language { get; init; }

    /// <summary>Words of the sheet.</summary>
    public required SheetWords Words { get; init; }

    /// <summary>Trade name.</summary>
    public required string Product { get; init; }

    /// <summary>Who answers for it.</summary>
    public required string Maker { get; init; }

    /// <summary>Name of the format.</summary>
    public required string Format { get; init; }

    /// <summary>Number of the revision.</summary>
    public required int Revision { get; init; }

    /// <summary>Day of the revision.</summary>
    public required DateOnly Revised { get; init; }

    /// <summary>The 16 sections.</summary>
    public required IReadOnlyList<SheetSection> Sections { get; init; }

    /// <summary>When it is due.</summary>
    public required SheetDutyFinding Duty { get; init; }

    /// <summary>Which parts are not in its language, for its first page; null for none.</summary>
    public string? LanguageNote => Languages.Whole;

    /// <summary>What keeps the sheet from being lawful as it stands.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }

    /// <summary>What must be said where parts of it are not in its language.</summary>
    public required SheetLanguageNote Languages { get; init; }

    /// <summary>The subsection with this number.</summary>
    public SheetSubsection? Find(string number) => Sections.SelectMany(s => s.Subsections).FirstOrDefault(s => s.Number == number);
}
