using System.Text;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Readers;

/// <summary>
/// What is said of every slip in the files of the invented law, with its line and column and what to write instead:
/// <c>Law/Readers/Refused</c>. A slip that is not there is let pass.
/// </summary>
public sealed class RefusedFieldTests
{
    private static readonly string Folder = Path.Combine(InventedLaw.Folder, "Refused");
    private const string Missing = "missing";
    private const string AList = "= a list";

    // Their readers are shown by others: a second kind, and words that are read as product-safety.yaml is.
    private static readonly string[] ReadAlike = ["kinds/stub.yaml", "/authority.yaml", "/procedure.yaml"];

    private static readonly string[] Yaml =
    [
        .. InventedLaw
            .Texts.Keys.Where(k =>
                k.EndsWith(".yaml", StringComparison.Ordinal) && !Array.Exists(ReadAlike, a => k.EndsWith(a, StringComparison.Ordinal))
            )
            .Order(StringComparer.Ordinal),
    ];

    public static TheoryData<string> Files() => [.. Yaml];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_slip_is_told_as_it_was_approved(string file)
    {
        var text = new StringBuilder();
        string where = "-";
        foreach (TreeChange change in new TreeChanges(MisspellsKeys(file)).Of(InventedLaw.Tree(file)))
        {
            string[] said = [.. Said(file, InventedLaw.ReadWith(file, change.Tree).Problems)];
            if (!Array.Exists(said, s => !IsOfItsForm(s)) || (change.What == AList && Array.Exists(said, IsOfItsForm)))
            {
                continue;
            }

            if (change.Where != where)
            {
                where = change.Where;
                text.Append(where.Length == 0 ? "the file\n" : $"{where}\n");
            }

            text.Append($"  {change.What}\n");
            text.AppendJoin("", said.Select(s => $"    {s}\n"));
        }

        ApprovedPlace.Of(Folder, file).Holds(text.ToString());
    }

    // What is no text must not pass for an empty one.
    [Theory]
    [MemberData(nameof(Files))]
    public void A_list_passes_for_no_text(string file) =>
        Assert.All(
            new TreeChanges(MisspellsKeys(file)).Of(InventedLaw.Tree(file)).Where(c => c.What == AList),
            change => Assert.False(InventedLaw.ReadWith(file, change.Tree).Problems.None, change.Where)
        );

    [Fact]
    public void Every_file_that_is_missing_is_told()
    {
        var text = new StringBuilder();
        foreach (string file in InventedLaw.Texts.Keys.Order(StringComparer.Ordinal))
        {
            var texts = new Dictionary<string, string>(InventedLaw.Texts.ToDictionary());
            texts.Remove(file);
            text.Append($"{file}\n");
            text.AppendJoin("", InventedLaw.Read(texts).Problems.Found.Take(3).Select(p => $"    {p}\n"));
        }

        ApprovedPlace.Of(Folder, Missing).Holds(text.ToString());
    }

    [Fact]
    public void Every_approved_list_is_of_a_file() =>
        Assert.Equal(Yaml.Append(Missing).Order(StringComparer.Ordinal), ApprovedPlace.Names(Folder).Order(StringComparer.Ordinal));

    private static bool MisspellsKeys(string file) =>
        file.StartsWith("languages/", StringComparison.Ordinal) || file.StartsWith("kinds/", StringComparison.Ordinal);

    // Two editions may read one file, and say it twice. What follows in other files is shown by its first.
    private static IEnumerable<string> Said(string file, Problems problems)
    {
        ILookup<bool, Problem> here = problems.Found.ToLookup(p => p.Place.File == "data/" + file);
        return here[true]
            .Select(p => $"{p.Place.Line}:{p.Place.Column} {p.What} {p.Remedy}".TrimEnd())
            .Concat(here[false].Take(1).Select(p => p.ToString()))
            .Distinct();
    }

    // That a text, a list or a number is wanted is said by Fields, in the same words everywhere.
    private static bool IsOfItsForm(string said) =>
        said.EndsWith(" must be a text.", StringComparison.Ordinal)
        || said.Contains(" must be a number, not ", StringComparison.Ordinal)
        || said.EndsWith(" must be a group of fields.", StringComparison.Ordinal)
        || said.EndsWith(" must be yes or no.", StringComparison.Ordinal);
}
