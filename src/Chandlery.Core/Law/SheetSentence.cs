using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>A sentence of the safety data sheet, as a row of data.</summary>
/// <param name="Subsection">Where it stands.</param>
/// <param name="When">Conditions of which one must hold; empty for always.</param>
/// <param name="Unless">Conditions of which none may hold.</param>
public sealed record SheetSentence(string Subsection, SheetConditions When, SheetConditions Unless) : SheetRow(Subsection, When, Unless)
{
    /// <summary>What translations call it.</summary>
    public required string Key { get; init; }

    /// <summary>What stands to its left in a list of pairs; null for a paragraph. English, with translations by key among the words.</summary>
    public required string? Label { get; init; }

    /// <summary>The English text, with marks.</summary>
    public required string Text { get; init; }

    /// <summary>Set in bold, as a heading.</summary>
    public required bool IsStrong { get; init; }

    /// <summary>What the mark {clause} stands for; none where the text has no such mark.</summary>
    public required Citation Clause { get; init; }

    /// <summary>Key of the sentence of all laws in whose stead this one of an edition stands; null for none.</summary>
    public required string? Replaces { get; init; }
}
