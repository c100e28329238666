using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>A sentence of the safety data sheet, as a row of data.</summary>
/// <param name="Key">What translations call it.</param>
/// <param name="Subsection">Where it stands.</param>
/// <param name="Label">What stands to its left in a list of pairs; null for a paragraph. English, with translations by key among the words.</param>
/// <param name="Text">The English text, with marks.</param>
/// <param name="IsStrong">Set in bold, as a heading.</param>
/// <param name="Clause">What the mark {clause} stands for; none where the text has no such mark.</param>
/// <param name="Replaces">Key of the sentence of all laws in whose stead this one of an edition stands; null for none.</param>
/// <param name="When">Conditions of which one must hold; empty for always.</param>
/// <param name="Unless">Conditions of which none may hold.</param>
public sealed record SheetSentence(
    string Key,
    string Subsection,
    string? Label,
    string Text,
    bool IsStrong,
    Citation Clause,
    string? Replaces,
    SheetConditions When,
    SheetConditions Unless
) : SheetRow(Subsection, When, Unless);
