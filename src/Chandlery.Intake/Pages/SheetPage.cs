namespace Chandlery.Intake.Pages;

/// <summary>A page as words and ruled lines.</summary>
/// <param name="Number">Page number, from 1.</param>
/// <param name="WidthMm">Width.</param>
/// <param name="HeightMm">Height.</param>
/// <param name="Words">Words, in no order that means anything.</param>
/// <param name="Rules">Ruled lines.</param>
public sealed record SheetPage(int Number, double WidthMm, double HeightMm, IReadOnlyList<Word> Words, IReadOnlyList<RuledLine> Rules);
