using Chandlery.Core.Hazards;
using Chandlery.Core.Law.AnnexVi;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Opens what is known of substances; table and names are read when a substance is first asked for.</summary>
internal sealed class SubstanceShelf
{
    private const string Table = "substances/annex-vi.tsv";
    private const string Names = "substances/known.tsv";

    private readonly LawFiles files;
    private readonly HazardVocabulary vocabulary;
    private readonly Problems problems;
    private readonly Lock reading;

    public SubstanceShelf(LawFiles files, HazardVocabulary vocabulary, Problems problems, Lock reading)
    {
        this.files = files;
        this.vocabulary = vocabulary;
        this.problems = problems;
        this.reading = reading;
        (IReadOnlyList<EntryHistory> more, IReadOnlyList<ExpectedClasses> expected, IReadOnlyList<string> extracts) = new SubstanceReader(
            vocabulary
        ).Read(files.Open("substances/list.yaml"));

        // Whoever reads an edition holds the lock already; so no lock of Lazy's own may wait for it.
        List = new SubstanceList(
            new Lazy<AnnexTable>(OpenTable, LazyThreadSafetyMode.PublicationOnly),
            more,
            new Lazy<IReadOnlyList<KnownSubstance>>(ReadNames, LazyThreadSafetyMode.PublicationOnly),
            expected,
            extracts
        );
    }

    public SubstanceList List { get; }

    /// <summary>Reads the whole table and the names, and notes what no longer fits hazards, statements, acts or notes.</summary>
    public void ReadAll()
    {
        _ = List.Known;
        if (files.TextOrNull(Table) is null)
        {
            List.Table?.CheckFit("data/" + Table, problems);
        }
        else
        {
            _ = List.Table;
        }
    }

    private AnnexTable OpenTable()
    {
        lock (reading)
        {
            AnnexRules rules = AnnexReader.Read(
                files.Open("substances/annex-vi.yaml"),
                vocabulary,
                files.Editions,
                files.Folders("languages", "statements.yaml")
            );
            var rows = new AnnexRowReader(vocabulary, rules);
            if (files.TextOrNull(Table) is not { } own)
            {
                return new AnnexTable(PackedLines.Shipped(), rows);
            }

            string[] lines = own.ReplaceLineEndings("\n").Split('\n');
            if (lines[0] != AnnexLine.Head)
            {
                problems.Add(
                    new TextPlace("data/" + Table, 1, 1),
                    "The table has another head than it must have.",
                    $"Write {AnnexLine.Head.Replace("\t", ", ", StringComparison.Ordinal)}, with a tab between them."
                );
            }

            var table = new AnnexTable(new TextLines([.. lines.Skip(1).Where(l => l.Length > 0)]), rows);
            table.Check("data/" + Table, problems);
            return table;
        }
    }

    private IReadOnlyList<KnownSubstance> ReadNames()
    {
        lock (reading)
        {
            return KnownReader.Read("data/" + Names, files.Text(Names), problems);
        }
    }
}
