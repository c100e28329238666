namespace Chandlery.Sheets.Wild;

/// <summary>The paper that a random sheet is printed on.</summary>
/// <param name="WidthMm">Width.</param>
/// <param name="HeightMm">Height.</param>
/// <param name="MarginMm">Margin.</param>
/// <param name="TypePoints">Type size.</param>
/// <param name="Columns">Columns of text on a page, one or two.</param>
/// <param name="IsTurned">True when all text runs up the page.</param>
/// <param name="Header">Text at the top of every page.</param>
/// <param name="Footer">Text at the bottom of every page, before its number.</param>
public sealed record SheetForm(
    double WidthMm,
    double HeightMm,
    double MarginMm,
    double TypePoints,
    int Columns,
    bool IsTurned,
    string Header,
    string Footer
);
