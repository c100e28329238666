using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>
/// The candle as a page of accounts: wicks as a tally, what is in it at the decimal mark, summed under one rule and closed by two.
/// Where the recipe stays the maker's, it tells wicks, hours and the sum alone.
/// </summary>
internal sealed class Ledger : IOrnament
{
    private const double LargestStepMm = 11;
    private const double FigureColumn = 0.5;

    private static readonly Ink OwnInk = Ink.Of("#1B2C44") with { Process = new Cmyk(60, 35, 0, 75) };
    private static readonly Ink OwnRed = Ink.Of("#C23B2C") with { Process = new Cmyk(0, 70, 75, 25) };
    private static readonly Ink OwnRuling = Ink.Of("#B4C9D1");

    /// <inheritdoc/>
    public string Kind => "ledger";

    /// <inheritdoc/>
    public IEnumerable<SceneItem> Draw(OrnamentRequest request)
    {
        Box room = request.Room;
        List<LedgerRow> rows = Rows(request.Facts);
        double step = Math.Min(LargestStepMm, room.Height / (rows.Count + 0.35));
        Ink ink = request.Inks.Deep(OwnInk);
        Ink red = request.Inks.Accent(OwnRed);
        bool ruled = !request.Inks.IsOneInk;
        double size = step * 0.86;
        double small = Math.Max(1.9, step * 0.42);
        double mark = room.X + (room.Width * FigureColumn);
        double words = mark + (size * 0.28);
        double first = room.Bottom - (step * (rows.Count - 0.65));

        for (int i = -40; ruled && i <= rows.Count + 40; i++)
        {
            double y = first + (i * step) + (step * 0.18);
            yield return Strokes.Line(room.X - 60, y, room.Right + 60, y, request.Inks.Light(OwnRuling), 0.2);
        }

        if (ruled)
        {
            double top = (request.Name?.Box.Bottom ?? room.Y) + (step * 0.4);
            yield return Strokes.Line(mark + (size * 0.1), top, mark + (size * 0.1), room.Bottom + 60, red, 0.15);
            yield return Strokes.Line(mark + (size * 0.1) + 0.6, top, mark + (size * 0.1) + 0.6, room.Bottom + 60, red, 0.15);
        }

        for (int i = 0; i < rows.Count; i++)
        {
            LedgerRow row = rows[i];
            double baseline = first + (i * step);
            Weight weight = row.IsSum ? Weight.Medium : Weight.Light;
            if (row.Tally > 0)
            {
                yield return Shading.Stroke(Tally.Draw(row.Tally, mark - (size * 0.1), baseline, size * 0.72), ruled ? red : ink, 0.3);
            }
            else
            {
                TextItem figure = Strokes.Text(row.Figure, weight, 0, baseline, size, ink);
                TextItem whole = Strokes.Text(row.Figure.Split('.', ',')[0], weight, 0, baseline, size, ink);
                TextItem decimals = Strokes.Text(row.WidestDecimals, weight, 0, baseline, size, ink);
                double left = mark - whole.WidthMm - decimals.WidthMm;
                yield return figure with
                {
                    XMm = left,
                };
                if (row.IsSum)
                {
                    double right = left + figure.WidthMm;
                    yield return Strokes.Line(left - 1, baseline - (size * 0.86), right, baseline - (size * 0.86), ruled ? red : ink, 0.3);
                    yield return Strokes.Line(left - 1, baseline + (step * 0.16), right, baseline + (step * 0.16), ruled ? red : ink, 0.3);
                    yield return Strokes.Line(left - 1, baseline + (step * 0.26), right, baseline + (step * 0.26), ruled ? red : ink, 0.3);
                }
            }

            Face face = Face.Of(row.IsSum ? Weight.Medium : Weight.Regular);
            FittingText named = FittingText.Of(row.Words, face, small, room.Right - words);
            yield return Strokes.Text(named.Text, face, words, baseline, named.SizeMm, ink);
        }
    }

    private static List<LedgerRow> Rows(DesignFacts facts)
    {
        string decimals = facts.ShowsShares ? $"{facts.Figures.DecimalMark}0" : "";
        var rows = new List<LedgerRow>();
        if (facts.Wicks > 0)
        {
            rows.Add(new LedgerRow("", facts.Words.Wicks, decimals) { Tally = facts.Wicks });
        }

        if (facts.BurnHours > 0)
        {
            rows.Add(new LedgerRow(facts.Figures.Declared(facts.BurnHours), facts.Words.Hours, decimals));
        }

        if (facts.ShowsShares && facts.Parts.Count > 0)
        {
            // The wax takes the rounding, so that the column adds up.
            List<double> oils = [.. facts.Parts.Select(p => Math.Round(p.Share * (facts.NetGrams - facts.WaxGrams), 1))];
            rows.Add(new LedgerRow(facts.Figures.Tenth(facts.NetGrams - oils.Sum()), facts.Words.Wax, decimals));
            rows.AddRange(facts.Parts.Zip(oils, (part, grams) => new LedgerRow(facts.Figures.Tenth(grams), part.Name, decimals)));
            rows.Add(new LedgerRow(facts.Figures.Tenth(facts.NetGrams), facts.Words.Grams, decimals) { IsSum = true });
        }
        else
        {
            rows.Add(new LedgerRow(facts.Figures.Declared(facts.NetGrams), facts.Words.Grams, decimals) { IsSum = true });
        }

        return rows;
    }
}
