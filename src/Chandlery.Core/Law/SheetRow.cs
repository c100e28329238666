namespace Chandlery.Core.Law;

/// <summary>A row of the safety data sheet: a sentence, or a place where something computed stands.</summary>
/// <param name="Subsection">Where it stands, such as 4.1; 16 for the section without subsections.</param>
/// <param name="When">Conditions of which one must hold; empty for always.</param>
/// <param name="Unless">Conditions of which none may hold.</param>
public abstract record SheetRow(string Subsection, SheetConditions When, SheetConditions Unless)
{
    /// <summary>Whether the row stands on the sheet of a candle of which these conditions hold.</summary>
    public bool Stands(SheetConditions holding) => (When.IsEmpty || When.AnyOf(holding)) && !Unless.AnyOf(holding);
}
