using Chandlery.Intake.Pages;

namespace Chandlery.Hostile;

/// <summary>A supplier's page made from typed lines, so that the reading of tables can be bent without the making of PDFs.</summary>
internal static class TypedPage
{
    private const double ColumnMm = 1.6;
    private const double LineMm = 4.5;
    private const double TypeSizeMm = 3;
    private const double MarginMm = 10;
    private const int MostLines = 60;

    /// <summary>A composition table as sheets print it; the product is invented.</summary>
    public const string Sample = """
        SAFETY DATA SHEET                                    Revision date: 10.03.2026   Version: 2
        SECTION 1: Identification
        Product name: Tidewrack
        SECTION 3: Composition/information on ingredients
        3.2 Mixtures
        Chemical name          CAS No.      EC No.       Conc. (% w/w)   Classification
        d-Limonene             5989-27-5    227-813-5    >= 10 - < 25    Flam. Liq. 3, H226; Skin Irrit. 2, H315;
                                                                         Skin Sens. 1B, H317; Aquatic Chronic 3, H412
        Linalool               78-70-6      201-134-4    2,5 - 5         Skin Sens. 1B, H317 (C >= 1 %)
        Hexyl cinnamal         101-86-0     202-983-3    < 1             Aquatic Acute 1, H400 (M=1)
        SECTION 9: Physical and chemical properties
        Flash point: 62 °C (closed cup)      Density: 0,97 g/cm3
        """;

    /// <summary>The page.</summary>
    public static SheetPage Of(string text)
    {
        var words = new List<Word>();
        string[] lines = text.Split('\n');
        for (int l = 0; l < Math.Min(lines.Length, MostLines); l++)
        {
            double top = MarginMm + (l * LineMm);
            for (int start = 0; start < lines[l].Length; start++)
            {
                int end = start;
                while (end < lines[l].Length && lines[l][end] > ' ')
                {
                    end++;
                }

                if (end > start)
                {
                    var box = new Box(MarginMm + (start * ColumnMm), top, MarginMm + (end * ColumnMm) - 0.2, top + TypeSizeMm);
                    words.Add(new Word(lines[l][start..end], box, TypeSizeMm));
                    start = end;
                }
            }
        }

        return new SheetPage(1, 210, 297, words, []);
    }
}
