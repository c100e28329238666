using System.Collections.Concurrent;
using Chandlery.Core.Declared;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.AnnexVi;

/// <summary>
/// The table of harmonised classes: CLP Annex VI, Part 3, Table 3, with what each act made of its entries. Nothing is read before
/// it is asked for.
/// </summary>
public sealed class AnnexTable
{
    private readonly AnnexLines lines;
    private readonly AnnexRowReader rows;
    private readonly ConcurrentDictionary<string, IReadOnlyList<EntryHistory>> found = new(StringComparer.Ordinal);

    // Read through once, when a line of a sheet has no number to be found by.
    private readonly Lazy<ILookup<string, string>> indexesByName;

    internal AnnexTable(AnnexLines lines, AnnexRowReader rows)
    {
        this.lines = lines;
        this.rows = rows;
        indexesByName = new(() =>
            lines
                .All()
                .SelectMany(line => AnnexRowReader.NamesOf(line).Select(n => (Name: PlainText.Of(n), Index: AnnexLine.IndexOf(line))))
                .ToLookup(pair => pair.Name, pair => pair.Index)
        );
    }

    /// <summary>How the table is read: acts, notes.</summary>
    public AnnexRules Rules => rows.Rules;

    /// <summary>
    /// Every entry that has ever covered the substance: by its CAS number, and by its EC number where no entry has the former.
    /// </summary>
    public IReadOnlyList<EntryHistory> Of(SubstanceIdentity identity)
    {
        IReadOnlyList<EntryHistory> byCas = identity.Cas is { } cas ? Of(cas.Text) : [];
        return byCas.Count == 0 && identity.Ec is { } ec ? Of(ec.Text) : byCas;
    }

    /// <summary>The substances that the table, in any of its versions, calls by exactly this name.</summary>
    /// <param name="plainName">The name as <see cref="PlainText"/> makes it.</param>
    public IEnumerable<EntryMember> Named(string plainName) =>
        Entries([.. indexesByName.Value[plainName].Distinct()])
            .SelectMany(h => h.Versions)
            .SelectMany(v => v.Members)
            .Where(m => m.Names.Any(n => PlainText.Of(n) == plainName));

    /// <summary>Entries for whole groups that a substance of this name may be one of.</summary>
    public IEnumerable<EntryHistory> GroupsOf(string name)
    {
        string[] wanted = [.. rows.Rules.Groups.Where(g => g.MayHold(name)).Select(g => g.IndexNumber)];
        return wanted.Length == 0 ? [] : Entries(wanted);
    }

    /// <summary>The entries of index numbers; those that the table does not have are left out. Only their lines are read.</summary>
    public IEnumerable<EntryHistory> Entries(params string[] indexNumbers) =>
        Histories(lines.All().Where(line => indexNumbers.Contains(AnnexLine.IndexOf(line))));

    /// <summary>All entries, in the order of the index numbers.</summary>
    public IEnumerable<EntryHistory> All() => Histories(lines.All());

    /// <summary>Reads every line, and notes what is wrong with it.</summary>
    internal void Check(string file, Problems problems)
    {
        int number = 1;
        foreach (string line in lines.All())
        {
            number++;
            Parsed<HarmonisedEntry> row = rows.Read(line);
            if (!row.Success)
            {
                problems.Add(new TextPlace(file, number, 1), row.Reason);
            }
        }
    }

    /// <summary>Reads every line of the program's own table, and notes once how many cannot be read and why the first cannot.</summary>
    internal void CheckFit(string file, Problems problems)
    {
        var found = new Problems();
        Check(file, found);
        if (!found.None)
        {
            problems.Add(
                found.Found[0].Place,
                found.Found[0].What,
                $"{found.Found.Count} lines of the program's own table do not fit hazards, statements, acts or notes as they are now: look at those files."
            );
        }
    }

    private IReadOnlyList<EntryHistory> Of(string number) =>
        found.GetOrAdd(
            number,
            static (n, table) =>
                [.. table.Histories(table.lines.Near(n)).Where(h => h.Versions.Any(v => v.Members.Any(m => m.Cas == n || m.Ec == n)))],
            this
        );

    private IEnumerable<EntryHistory> Histories(IEnumerable<string> near) =>
        near.GroupBy(AnnexLine.IndexOf)
            .Select(entry => new EntryHistory(
                entry.Key,
                [.. entry.Select(line => Sound(rows.Read(line))).OrderBy(v => v.From).ThenBy(v => v.Act.Order)]
            ));

    private static HarmonisedEntry Sound(Parsed<HarmonisedEntry> row) =>
        row.Success ? row.Value : throw new InvalidDataException($"data/substances/annex-vi.tsv: {row.Reason}");
}
