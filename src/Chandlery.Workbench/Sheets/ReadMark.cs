namespace Chandlery.Workbench.Sheets;

/// <summary>Where a value of a draft stands in its supplier's PDF.</summary>
/// <param name="Field">Names and positions, joined by dots, that lead to the value in the declaration; null where no value stands there.</param>
/// <param name="Document">Which of the PDFs, from 0.</param>
/// <param name="Page">Page, from 1.</param>
/// <param name="Box">Left, top, right and bottom, millimetres from the page's top left corner.</param>
internal sealed record ReadMark(string? Field, int Document, int Page, IReadOnlyList<double> Box);
