using Chandlery.Files;
using Chandlery.Sheets;
using Chandlery.Sheets.Wild;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Intake;

/// <summary>
/// Reads random suppliers' documents whose truth is known from their seeds: sheets, certificates and statements in seven languages.
/// Odd seeds are held back from tuning and counted apart. <c>tests/Chandlery.Sheets/wild.sh</c> reads many more, printed by outside
/// engines.
/// </summary>
public sealed class WildCorpusTests(Xunit.Abstractions.ITestOutputHelper output)
{
    private const int Documents = 240;
    private const int FirstOfLaterForms = 200_000;
    private const int LaterDocuments = 80;

    /// <summary>
    /// A few of them as outside engines printed them, half of them held back; a file's name says its seed and its engine, and <c>wild.sh</c>
    /// prints it again.
    /// </summary>
    [Fact]
    public void Documents_of_outside_engines_are_read_as_they_were()
    {
        string folder = Path.Combine(CorpusScore.Folder, "outside");
        IEnumerable<string> engines = Directory.GetFiles(folder, "*.pdf").Select(f => Path.GetFileNameWithoutExtension(f).Split('.')[1]);
        Assert.Equal(7, engines.Distinct().Count());
        WildReader reader = ReadPrinted(folder);
        output.WriteLine(string.Join('\n', reader.Seen.Differences));
        output.WriteLine(string.Join('\n', WildTable.Groups("engine", reader.Seen.Engines, reader.Unseen.Engines)));
        Assert.Equal((0, 0), (reader.Seen.WrongUnmarked, reader.Unseen.WrongUnmarked));
        Assert.Equal((0, 0), (reader.Seen.MissingUnsaid, reader.Unseen.MissingUnsaid));
        Assert.InRange(reader.Seen.Whole, 0.99, 1);
        Assert.InRange(reader.Unseen.Whole, 0.98, 1);
    }

    /// <summary>
    /// Documents that once had a value wrong or missing without a word: rows that a page's end tore, headings of groups without rules,
    /// notes parted between rows, a table wider than its page. They may be read wrong, but not in silence.
    /// </summary>
    [Fact]
    public void What_cannot_be_read_for_certain_is_marked()
    {
        WildReader reader = ReadPrinted(Path.Combine(CorpusScore.Folder, "outside", "torn"));
        output.WriteLine(string.Join('\n', reader.Seen.Differences.Concat(reader.Unseen.Differences)));
        Assert.Equal((4, 5), (reader.Seen.Documents, reader.Unseen.Documents));
        Assert.Equal((0, 0), (reader.Seen.WrongUnmarked, reader.Unseen.WrongUnmarked));
        Assert.Equal((0, 0), (reader.Seen.MissingUnsaid, reader.Unseen.MissingUnsaid));
    }

    private static WildReader ReadPrinted(string folder)
    {
        IReadOnlyDictionary<string, string> data = ShippedFiles.Data(null, new Problems());
        var maker = new WildMaker(SheetSubstance.All(), data);
        var reader = new WildReader(TestLaw.Lawbook, data);
        foreach (string file in Directory.GetFiles(folder, "*.pdf").Order(StringComparer.Ordinal))
        {
            string name = Path.GetFileNameWithoutExtension(file);
            WildSheet sheet = maker.Make(int.Parse(name.Split('.')[0], System.Globalization.CultureInfo.InvariantCulture));
            reader.Read(name, sheet, File.ReadAllBytes(file));
        }

        return reader;
    }

    // Documents of seeds from 200000 on may also set their compositions as cards, on their side, with leaders or under headings of groups.
    [Fact]
    public void Forms_that_were_added_later_are_read_as_well()
    {
        var problems = new Problems();
        IReadOnlyDictionary<string, string> data = ShippedFiles.Data(null, problems);
        var maker = new WildMaker(SheetSubstance.All(), data);
        var reader = new WildReader(TestLaw.Lawbook, data);
        for (int seed = FirstOfLaterForms; seed < FirstOfLaterForms + LaterDocuments; seed++)
        {
            WildSheet sheet = maker.Make(seed);
            reader.Read($"{seed} {sheet.Language} {sheet.Layout}", sheet, Press.Print(sheet));
        }

        output.WriteLine(string.Join('\n', reader.Seen.Differences));
        Assert.Superset(
            new HashSet<string> { "Cards", "OnItsSide", "Leaders", "Groups" },
            reader.Seen.Layouts.Keys.Concat(reader.Unseen.Layouts.Keys).Select(l => l.Split(' ')[0]).ToHashSet()
        );
        Assert.Equal((0, 0), (reader.Seen.WrongUnmarked, reader.Unseen.WrongUnmarked));
        Assert.Equal((0, 0), (reader.Seen.MissingUnsaid, reader.Unseen.MissingUnsaid));
        Assert.InRange(reader.Seen.Whole, 0.95, 1);
        Assert.InRange(reader.Unseen.Whole, 0.95, 1);
    }

    [Fact]
    public void No_value_is_wrong_unmarked_and_no_row_is_missing_unsaid_on_seen_and_unseen_documents()
    {
        var problems = new Problems();
        IReadOnlyDictionary<string, string> data = ShippedFiles.Data(null, problems);
        var maker = new WildMaker(SheetSubstance.All(), data);
        var reader = new WildReader(TestLaw.Lawbook, data);
        for (int seed = 0; seed < Documents; seed++)
        {
            WildSheet sheet = maker.Make(seed);
            reader.Read($"{seed} {sheet.Language} {sheet.Layout}", sheet, Press.Print(sheet));
        }

        List<string> table = [.. WildTable.Lines(reader.Seen, reader.Unseen)];
        output.WriteLine(string.Join('\n', table));
        output.WriteLine(string.Join('\n', WildTable.Groups("layout", reader.Seen.Layouts, reader.Unseen.Layouts)));
        Assert.Equal((0, 0), (reader.Seen.WrongUnmarked, reader.Unseen.WrongUnmarked));
        Assert.Equal((0, 0), (reader.Seen.MissingUnsaid, reader.Unseen.MissingUnsaid));
        Assert.InRange(reader.Seen.Whole, 0.95, 1);
        Assert.InRange(reader.Unseen.Whole, 0.95, 1);
        string guide = File.ReadAllText(Path.Combine(TestLaw.Repository, "DEVELOPERS.md"));
        Assert.All(table, line => Assert.Contains(line, guide, StringComparison.Ordinal));
    }
}
