using Chandlery.Core.Assessed;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Shapes;

namespace Chandlery.Paper.Proofs;

/// <summary>Checks a label's PDF against what the law asks of this candle, from the PDF alone.</summary>
public static class LabelInspector
{
    // What a printer's grid and rounding may take away; far below what anybody can see.
    private const double ToleranceMm = 0.01;

    // By so much a knife or die may stray (common practice of printers, no source).
    private const double LeastFromCutMm = 1;

    /// <summary>All checks of a label that was made, on the PDF that comes of it.</summary>
    public static IReadOnlyList<Inspection> Inspect(MadeLabel label, Assessment a) =>
        Inspect(MeasuredPage.ReadOwn(label.Pdf()), a, label.LeftOff, label.Panel, [.. label.Document.Pages.Select(p => p.CutPath)]);

    /// <summary>All checks.</summary>
    /// <param name="pages">Measured pages: one, or a leaflet's front and inside.</param>
    /// <param name="a">The candle.</param>
    /// <param name="leftOff">Codes of statements that were lawfully left off.</param>
    /// <param name="panel">Where the legal panel lies on the last page; null for the whole page.</param>
    /// <param name="cuts">For each page the outline along which it is cut, SVG path data in millimetres, or null for its own edges; none where nothing is known.</param>
    public static IReadOnlyList<Inspection> Inspect(
        IReadOnlyList<MeasuredPage> pages,
        Assessment a,
        IReadOnlySet<string> leftOff,
        Box? panel = null,
        IReadOnlyList<string?>? cuts = null
    )
    {
        LabelFormat format = a.Edition.Formats.On(a.AsOf);
        SizeBand band = format.BandFor(a.Vessel.Brimful);
        var checks = new List<Inspection>();
        Box? law = panel ?? (pages.Count > 0 ? pages[^1].Panel : null);
        if (cuts is not null)
        {
            checks.AddRange(pages.Zip(cuts).Skip(law is null ? 0 : pages.Count - 1).Select(p => FromCut(p.First, law, p.Second)));
        }

        if (law is { } box)
        {
            pages = [pages[^1].Within(box)];
        }

        foreach (MeasuredPage page in pages)
        {
            checks.Add(Size(page, band, format));
            checks.AddRange(Letters(page, band, format, a.Edition.Label));
        }

        MeasuredPage full = pages[^1];
        checks.AddRange(Pictograms(full, a, band, format));
        checks.Add(Figures(pages, a));
        checks.AddRange(Texts(full, a, leftOff));
        return checks;
    }

    private static Inspection Size(MeasuredPage page, SizeBand band, LabelFormat format)
    {
        double shorter = Math.Min(page.WidthMm, page.HeightMm) + ToleranceMm;
        double longer = Math.Max(page.WidthMm, page.HeightMm) + ToleranceMm;
        bool holds =
            shorter >= Math.Min(band.Label.Width.Value, band.Label.Height.Value)
            && longer >= Math.Max(band.Label.Width.Value, band.Label.Height.Value);
        string ifPossible = band.IfPossible ? ", if possible" : "";
        return new Inspection(
            "label size",
            $"{Mm(page.WidthMm)} x {Mm(page.HeightMm)} mm",
            $"at least {band.Label}{ifPossible}",
            holds || band.IfPossible,
            format.Clause
        );
    }

    // What the law asks for must not be cut into: each letter and pictogram against the line along which the page is cut.
    private static Inspection FromCut(MeasuredPage page, Box? panel, string? cut)
    {
        CutLine edge = CutLine.Of(cut ?? Scenes.Strokes.BoxPath(page.WidthMm, page.HeightMm));
        double nearest = page
            .Lines.SelectMany(l => l.Letters)
            .Concat(page.RedSquares)
            .Where(b => panel is not { } box || box.Holds(b))
            .Select(b => edge.DistanceOf((b.X, b.Y, b.Right, b.Bottom)))
            .DefaultIfEmpty(double.PositiveInfinity)
            .Min();
        return new Inspection(
            "nearest letter or pictogram to the cut",
            $"{Mm(nearest)} mm",
            $"at least {Mm(LeastFromCutMm)} mm",
            nearest >= LeastFromCutMm - ToleranceMm,
            "common practice of printers"
        );
    }

    private static IEnumerable<Inspection> Letters(MeasuredPage page, SizeBand band, LabelFormat format, LabelRules rules)
    {
        double? smallest = page.Lines.Min(l => l.XHeightMm);
        yield return new Inspection(
            "smallest lower-case x",
            smallest is { } x ? $"{Mm(x)} mm" : "no such letter found",
            $"at least {band.XHeight}",
            smallest >= band.XHeight.Value - ToleranceMm,
            format.XHeightClause
        );

        // Lines of one paragraph have the same letters; the distance between them against the type size.
        double least = double.PositiveInfinity;
        foreach ((MeasuredLine upper, MeasuredLine lower) in page.Lines.Zip(page.Lines.Skip(1)))
        {
            double distance = lower.BaselineMm - upper.BaselineMm;
            if (distance > 0.1 && upper.XHeightMm is { } height && lower.XHeightMm is { } other && Math.Abs(height - other) < ToleranceMm)
            {
                least = Math.Min(least, distance / (height / Paper.Fonts.Face.Of(Paper.Fonts.Weight.Regular).XHeight));
            }
        }

        if (!double.IsInfinity(least))
        {
            yield return new Inspection(
                "distance of lines",
                $"{Quantities(least)} of the type size",
                $"at least {Quantities(format.LineSpacing)}",
                least >= format.LineSpacing - 0.005,
                format.LineSpacingClause
            );
        }

        yield return new Inspection(
            "colour of text",
            page.Lines.All(l => l.IsBlack) ? "black" : "not all black",
            "black on white",
            page.Lines.All(l => l.IsBlack),
            rules.TextColourClause
        );
        int turned = page.Lines.Count(l => !l.IsLevel);
        yield return new Inspection(
            "direction of text",
            turned == 0 ? "level" : $"{turned} lines are turned",
            "level, so that it reads when the package stands as usual",
            turned == 0,
            rules.DirectionClause
        );
    }

    private static IEnumerable<Inspection> Pictograms(MeasuredPage page, Assessment a, SizeBand band, LabelFormat format)
    {
        int needed = a.Label.Pictograms.Count;
        yield return new Inspection(
            "number of pictograms",
            $"{page.RedSquares.Count}",
            $"{needed} ({string.Join(", ", a.Label.Pictograms.Select(p => p.Code))})",
            page.RedSquares.Count == needed,
            a.Edition.Label.PictogramsClause
        );
        if (page.RedSquares.Count > 0)
        {
            double side = page.RedSquareSidesMm.Min();
            yield return new Inspection(
                "smallest pictogram, side of its square",
                $"{Mm(side)} mm",
                $"at least {band.Pictogram}",
                side >= band.Pictogram.Value - ToleranceMm,
                format.Clause
            );
        }
    }

    private static Inspection Figures(IReadOnlyList<MeasuredPage> pages, Assessment a)
    {
        double required = a.Edition.Formats.Quantity.HeightFor(a.Candle, a.Vessel).Value;
        string quantity = a.Candle.NetVolume is { } volume
            ? Core.Quantities.Figures.Plain(volume.Value) + " ml"
            : Core.Quantities.Figures.Plain(a.Candle.NetMass.Value) + " g";
        MeasuredLine? line = pages.SelectMany(p => p.Lines).FirstOrDefault(l => l.Text.Contains(quantity, StringComparison.Ordinal));
        double? height = line?.FigureMm;
        return new Inspection(
            "figures of the quantity",
            height is { } h ? $"{Mm(h)} mm" : $"'{quantity}' not found",
            $"at least {Mm(required)} mm",
            height >= required - 0.02,
            a.Edition.Formats.Quantity.Clause
        );
    }

    private static IEnumerable<Inspection> Texts(MeasuredPage page, Assessment a, IReadOnlySet<string> leftOff)
    {
        string text = Squeeze(page.Text);
        foreach (Language language in a.Languages)
        {
            int at = 0;
            var missing = new List<string>();
            foreach (
                StatementChoice choice in a
                    .Label.Hazard.Concat(a.Label.Precautionary)
                    .Concat(a.Label.Supplemental)
                    .Where(c => !leftOff.Contains(c.Code))
            )
            {
                string expected = Squeeze(StatementText.Printed(language, choice.Code, a.Label));
                int found = text.IndexOf(expected, at, StringComparison.Ordinal);
                if (found < 0)
                {
                    missing.Add(choice.Code);
                }
                else
                {
                    at = found + expected.Length;
                }
            }

            yield return new Inspection(
                $"statements in {language.Name}, in order",
                missing.Count == 0 ? "all there" : $"missing or out of order: {string.Join(", ", missing)}",
                $"{a.Label.Hazard.Count + a.Label.Precautionary.Count + a.Label.Supplemental.Count - leftOff.Count} statements",
                missing.Count == 0,
                a.Edition.Label.StatementsClause
            );
        }

        (string What, string? Expected, string Clause)[] fixedTexts =
        [
            ("product name", a.Candle.Name, a.Edition.Label.ProductNameClause),
            ("supplier", a.Maker.Name, a.Edition.Label.SupplierClause),
            ("telephone", a.Maker.Telephone, a.Edition.Label.SupplierClause),
            ("UFI", a.Ufi, a.Edition.Ufi.Clause),
        ];
        foreach ((string what, string? expected, string clause) in fixedTexts.Where(t => t.Expected is not null))
        {
            bool there = text.Contains(Squeeze(expected!), StringComparison.Ordinal);
            yield return new Inspection(what, there ? "there" : "not found", expected!, there, clause);
        }
    }

    // Lines break where they must: blanks and the hyphens of broken words carry no meaning here. An apostrophe is printed curved.
    private static string Squeeze(string text) => new([.. Apostrophes.In(text).Where(c => !char.IsWhiteSpace(c) && c != WordBreaks.Soft)]);

    private static string Mm(double value) => Math.Round(value, 2).ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);

    private static string Quantities(double value) =>
        Math.Round(value, 3).ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);
}
