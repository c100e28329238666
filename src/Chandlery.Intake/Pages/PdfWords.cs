using System.Text;
using System.Text.RegularExpressions;
using Chandlery.Intake.Pictures;
using Chandlery.Yaml;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Exceptions;

namespace Chandlery.Intake.Pages;

/// <summary>Takes a PDF apart into words with their places.</summary>
/// <remarks>
/// The bytes come from strangers. The limits below bound what is looked at; a caller that must bound time and memory
/// as well runs this in a process of its own (see <see cref="PageWire"/>).
/// </remarks>
public static partial class PdfWords
{
    /// <summary>Largest file that is looked at.</summary>
    public const int LargestBytes = 25_000_000;

    private const int MostPages = 60;
    private const int MostLetters = 400_000;
    private const int MostRules = 100_000;
    private const double LargestPagePoints = 8000;
    private const int FewestLettersOfText = 40;
    private const int FewestTurnedLetters = 20;
    private const double MmPerPoint = 25.4 / 72;
    private const double ThinMm = 0.9;
    private const double ShortestRuleMm = 3;
    private const double BlankOfTypeSize = 0.18;
    private const int ShortestNumber = 7;
    private const int LongestNumber = 24;

    /// <summary>Why a document that holds nothing but pictures is refused.</summary>
    public const string Scanned =
        "The PDF holds pictures of pages, not text: it was scanned. Ask the supplier for the original PDF, or type the table by hand; numbers guessed from a picture would not be safe.";

    /// <summary>The pages; refused with the reason in plain words. Pages that are pictures are not read.</summary>
    public static Parsed<IReadOnlyList<SheetPage>> Parse(byte[] pdf) => Parse(pdf, null);

    /// <summary>The pages; refused with the reason in plain words.</summary>
    /// <param name="pdf">The file.</param>
    /// <param name="recognise">Recognises the words of a picture; null where nothing can, and then pages that are pictures are not read.</param>
    public static Parsed<IReadOnlyList<SheetPage>> Parse(byte[] pdf, PictureReader? recognise)
    {
        if (pdf.Length > LargestBytes)
        {
            return Parsed.Not<IReadOnlyList<SheetPage>>(
                $"The file is larger than {LargestBytes / 1_000_000} MB. A supplier's sheet is far smaller: is this the right file?"
            );
        }

        if (pdf.AsSpan(0, Math.Min(1024, pdf.Length)).IndexOf("%PDF-"u8) < 0)
        {
            return Parsed.Not<IReadOnlyList<SheetPage>>("This is not a PDF file.");
        }

        try
        {
            var unmapped = new UnmappedLetters();
            var options = new ParsingOptions
            {
                UseLenientParsing = true,
                SkipMissingFonts = true,
                Logger = unmapped,
            };
            using PdfDocument document = PdfDocument.Open(pdf, options);
            return Parse(document, unmapped, recognise);
        }
        catch (PdfDocumentEncryptedException)
        {
            return Parsed.Not<IReadOnlyList<SheetPage>>(
                "The PDF is encrypted with a password. Ask the supplier for one without, or print it to a new PDF after opening it."
            );
        }
        // The library meets damaged files with exceptions of many kinds; whatever it is, the file cannot be read.
        catch (Exception error) when (error is not OutOfMemoryException)
        {
            return Parsed.Not<IReadOnlyList<SheetPage>>(
                $"The PDF is damaged or of a kind that cannot be read ({error.GetType().Name}). Ask the supplier for a fresh copy."
            );
        }
    }

    private static Parsed<IReadOnlyList<SheetPage>> Parse(PdfDocument document, UnmappedLetters unmapped, PictureReader? recognise)
    {
        if (document.NumberOfPages > MostPages)
        {
            return Parsed.Not<IReadOnlyList<SheetPage>>(
                $"The PDF has {document.NumberOfPages} pages; at most {MostPages} are read. Cut out the sheet of the one oil."
            );
        }

        var pages = new List<SheetPage>();
        int letters = 0;
        int rules = 0;
        bool unreadable = false;
        bool pictures = false;
        foreach (Page page in document.GetPages())
        {
            letters += page.Letters.Count;
            if (letters > MostLetters)
            {
                return Parsed.Not<IReadOnlyList<SheetPage>>(
                    $"The PDF has more than {MostLetters} letters, far more than a sheet. Cut out the sheet of the one oil."
                );
            }

            var read = ReadablePage.Of(page, unmapped.Take());
            unreadable |= read.IsUnreadable;
            pictures |= page.NumberOfImages > 0;
            SheetPage? picture = read.Letters.Count < FewestLettersOfText ? PicturePage.Of(page, recognise) : null;
            pages.AddRange(
                picture is null
                    ? Turns(read).Select(turn => Turned(read, turn))
                    : [picture with { Doubts = [.. read.Doubts, .. picture.Doubts] }]
            );
            rules += pages.Where(p => p.Number == page.Number).Sum(p => p.Rules.Count);
            if (rules > MostRules)
            {
                return Parsed.Not<IReadOnlyList<SheetPage>>(
                    $"The PDF has more than {MostRules} ruled lines, far more than a sheet: it holds drawings. Cut out the sheet of the one oil."
                );
            }
        }

        if (pages.Sum(p => p.Words.Sum(w => w.Text.Length)) < FewestLettersOfText)
        {
            return Parsed.Not<IReadOnlyList<SheetPage>>(
                unreadable
                    ? "The PDF's fonts do not say which letters their signs stand for, so its text cannot be read. Ask the supplier for another copy, or type the table by hand."
                : pictures ? Scanned
                : "The PDF holds no text."
            );
        }

        return Parsed.As<IReadOnlyList<SheetPage>>(pages);
    }

    // The page as most of its letters stand, and again for text that runs another way, such as a table set sideways.
    private static IEnumerable<PageTurn> Turns(ReadablePage readable)
    {
        Page page = readable.Page;
        List<(int Quarters, int Letters)> counts =
        [
            .. readable
                .Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value))
                .GroupBy(PageTurn.Of)
                .Where(g => g.Key >= 0)
                .Select(g => (g.Key, g.Count()))
                .OrderByDescending(g => g.Item2),
        ];
        yield return new PageTurn(counts.Count == 0 ? 0 : counts[0].Quarters, page.Width, page.Height);
        foreach ((int quarters, int letters) in counts.Skip(1).Where(c => c.Letters >= FewestTurnedLetters))
        {
            yield return new PageTurn(quarters, page.Width, page.Height);
        }
    }

    private static SheetPage Turned(ReadablePage readable, PageTurn turn)
    {
        Page page = readable.Page;
        IEnumerable<PlacedLetter> Placed(IEnumerable<Letter> letters) =>
            letters.Where(l => PageTurn.Of(l) == turn.Quarters).Select(turn.Turned);
        List<Word> seen = [.. Words(Placed(readable.Letters).Where(turn.Holds))];
        List<PlacedLetter> beyond = [.. Placed(page.Letters).Where(l => !turn.Holds(l) && !string.IsNullOrWhiteSpace(l.Text))];
        IReadOnlyList<Word> whole = CutWords.Marked(seen, beyond, MmPerPoint);
        (IReadOnlyList<Word> words, IReadOnlyList<RuledLine> typed) = TypedRules.Of(page.Number, whole);
        return new SheetPage(
            page.Number,
            turn.TurnedWidth * MmPerPoint,
            turn.TurnedHeight * MmPerPoint,
            words,
            [.. Rules(page, turn).Concat(typed).Take(MostRules + 1)]
        )
        {
            Doubts = readable.Doubts,
            ValueDoubt = readable.ValueDoubt,
            GoOnBeyondEdge = CutWords.Lines(seen, beyond, MmPerPoint, turn.TurnedWidth * MmPerPoint),
        };
    }

    private static IEnumerable<Word> Words(IEnumerable<PlacedLetter> letters)
    {
        var run = new List<PlacedLetter>();
        foreach (PlacedLetter letter in letters)
        {
            bool goesOn =
                run.Count > 0
                && !string.IsNullOrWhiteSpace(letter.Text)
                && Math.Abs(letter.Baseline - run[^1].Baseline) < 0.15 * letter.Size
                && Math.Abs(letter.Left - run[^1].Right) < BlankOfTypeSize * letter.Size
                && !(Follows(letter.Text) && EndsInNumber(run))
                && TypedRules.IsBar(letter.Text) == TypedRules.IsBar(run[^1].Text);
            if (!goesOn && run.Count > 0)
            {
                foreach (Word word in Parted(run))
                {
                    yield return word;
                }

                run.Clear();
            }

            if (!string.IsNullOrWhiteSpace(letter.Text))
            {
                run.Add(letter);
            }
        }

        foreach (Word word in Parted(run))
        {
            yield return word;
        }
    }

    // Where columns are too narrow for their numbers, the next number begins right behind one.
    private static IEnumerable<Word> Parted(List<PlacedLetter> run)
    {
        string text = string.Concat(run.Select(l => Plain(l.Text)));
        int from = 0;
        while (text.Length == run.Count && NumberBeforeNumber().Match(text, from) is { Success: true } first)
        {
            yield return Join(run.GetRange(from, first.Length));
            from += first.Length;
        }

        if (from < run.Count)
        {
            yield return Join(run.GetRange(from, run.Count - from));
        }
    }

    // What a CAS, EC or REACH number never goes on with: where columns are too narrow the next cell begins right behind the number.
    private static bool Follows(string letter) => letter.Length > 0 && (char.IsLetter(letter[0]) || letter[0] is '<' or '>' or '≤' or '≥');

    private static bool EndsInNumber(List<PlacedLetter> run) =>
        run.Count >= ShortestNumber
        && char.IsAsciiDigit(run[^1].Text[0])
        && WholeNumber().IsMatch(string.Concat(run.TakeLast(LongestNumber).Select(l => Plain(l.Text))));

    [GeneratedRegex(@"(?<![0-9-])(?:[1-9][0-9]{1,6}-[0-9]{2}-[0-9]|[0-9]{3}-[0-9]{3}-[0-9]|0[0-9]-[0-9]{10}-[0-9]{2}(?:-[0-9]{4})?)$")]
    private static partial Regex WholeNumber();

    [GeneratedRegex(
        @"\G(?:[1-9][0-9]{1,6}-[0-9]{2}-[0-9]|[0-9]{3}-[0-9]{3}-[0-9]{2}-[0-9]|[0-9]{3}-[0-9]{3}-[0-9]|0[0-9]-[0-9]{10}-[0-9]{2}(?:-[0-9]{4})?)(?=[1-9][0-9]{1,6}-[0-9]{2}-[0-9](?![0-9])|[0-9]{3}-[0-9]{3}-[0-9]|0[0-9]-[0-9]{10}-[0-9]{2})"
    )]
    private static partial Regex NumberBeforeNumber();

    private static Word Join(List<PlacedLetter> run)
    {
        var text = new StringBuilder();
        foreach (PlacedLetter letter in run)
        {
            text.Append(Plain(letter.Text));
        }

        double size = run.Max(l => l.Size) * MmPerPoint;
        double baseline = run[0].Baseline * MmPerPoint;
        return new Word(
            text.ToString(),
            new Box(run[0].Left * MmPerPoint, baseline - (0.75 * size), run[^1].Right * MmPerPoint, baseline + (0.2 * size)),
            size
        );
    }

    // What type-setters draw for the eye, in the letters that people type.
    private static string Plain(string letters) =>
        letters switch
        {
            "\ufb00" => "ff",
            "\ufb01" => "fi",
            "\ufb02" => "fl",
            "\ufb03" => "ffi",
            "\ufb04" => "ffl",
            "\u00ad" or "\u2010" or "\u2011" or "\u2012" or "\u2212" => "-",
            "\u2018" or "\u2019" or "\u02bc" or "\u2032" => "'",
            "\u2a7e" or "\u2267" => "\u2265",
            "\u2a7d" or "\u2266" => "\u2264",
            _ => letters,
        };

    private static IEnumerable<RuledLine> Rules(Page page, PageTurn turn)
    {
        foreach (PdfSubpath part in page.Paths.Where(p => !p.IsClipping && (p.IsFilled || p.IsStroked)).SelectMany(p => p))
        {
            if (part.GetBoundingRectangle() is not { } r || !double.IsFinite(r.Left + r.Right + r.Top + r.Bottom))
            {
                continue;
            }

            (double x1, double y1) = turn.Turned(r.BottomLeft);
            (double x2, double y2) = turn.Turned(r.TopRight);
            var box = new Box(
                Math.Min(x1, x2) * MmPerPoint,
                Math.Min(y1, y2) * MmPerPoint,
                Math.Max(x1, x2) * MmPerPoint,
                Math.Max(y1, y2) * MmPerPoint
            );
            foreach (Box edge in Edges(box))
            {
                yield return new RuledLine(page.Number, edge);
            }
        }
    }

    // A box drawn around a cell gives its four edges.
    private static IEnumerable<Box> Edges(Box box)
    {
        bool thin = box.Height < ThinMm || box.Width < ThinMm;
        IEnumerable<Box> edges = thin
            ? [box]
            : [box with { Bottom = box.Top }, box with { Top = box.Bottom }, box with { Right = box.Left }, box with { Left = box.Right }];
        return edges.Where(e => Math.Max(e.Width, e.Height) > ShortestRuleMm);
    }
}
