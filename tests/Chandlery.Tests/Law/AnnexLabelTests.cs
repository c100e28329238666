using Chandlery.Core.Composed;
using Chandlery.Core.Hazards;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>
/// The law prints label elements with the entries of its table: a mixture that is wholly such a substance must get them. Physical
/// hazards, aspiration (which depends on how thick the mixture is) and what no rule computes are left out on both sides.
/// </summary>
public sealed class AnnexLabelTests
{
    // Where the law's own columns and its own rules part.
    private static readonly HashSet<string> Odd =
    [
        // The estimate that the act prints (0.5 mg/l, dusts) is the point estimate of Category 3 in Table 3.1.2, and at once the upper
        // bound of Category 2 in Table 3.1.1: reckoned with, the substance alone comes to Category 2, which is stricter.
        "603-066-00-4",
        "613-338-00-4",
        "613-344-00-7",
        // Two categories of one class for two routes; of a mixture only the worse one counts.
        "612-094-00-6",
    ];

    private static readonly HashSet<string> Physical = ["GHS01", "GHS02", "GHS03", "GHS04"];

    [Fact]
    [Outside(
        "CLP Annex VI, Part 3, Table 3, columns 'pictogram, signal word code' and 'hazard statement code', with every act that changed an entry"
    )]
    public void Every_entry_alone_gets_the_label_elements_that_the_law_gives_it()
    {
        Dictionary<(string, string), HarmonisedEntry[]> entries = TestLaw
            .Lawbook.Substances.Table!.All()
            .SelectMany(h => h.Versions)
            .GroupBy(v => (v.IndexNumber, v.Act.Celex))
            .ToDictionary(g => g.Key, g => g.ToArray());
        var wrong = new List<string>();
        int compared = 0;
        foreach (string[] cells in TestFile.Lines("Law/AnnexVi/labels.tsv").Select(line => line.Split('\t')))
        {
            HarmonisedEntry[] versions = entries[(cells[0], cells[1])];
            if (versions.Length != 1 || !versions[0].Stands || Odd.Contains(cells[0]))
            {
                continue;
            }

            compared++;
            wrong.AddRange(Differences(versions[0], cells[2], cells[3]).Select(d => $"{cells[0]} {versions[0].Act.Id}: {d}"));
        }

        Assert.True(wrong.Count == 0, $"{wrong.Count} of {compared}:\n" + string.Join('\n', wrong.Take(60)));
        Assert.InRange(compared, 3600, 3700);
    }

    private static IEnumerable<string> Differences(HarmonisedEntry entry, string signs, string statements)
    {
        LabelElements label = TestLaw.Law().Judge(Alone(entry)).Label;
        bool aspiration = entry.Claims.Any(c => c.Category.ClassCode == "Asp. Tox.");
        bool leftOut = aspiration || entry.Classes.Any(c => c.Claim is null || c.Claim.Category.Area == HazardArea.Physical);
        string[] lawSigns = [.. signs.Split(' ', StringSplitOptions.RemoveEmptyEntries)];
        HashSet<string> wanted = [.. lawSigns.Where(s => s.StartsWith("GHS", StringComparison.Ordinal) && !Physical.Contains(s))];
        HashSet<string> got = [.. label.Pictograms.Select(p => p.Text)];
        // The sign of corrosion stands for metals too.
        if (entry.Claims.Any(c => c.Category.ClassCode == "Met. Corr.") && !got.Contains("GHS05"))
        {
            wanted.Remove("GHS05");
        }

        if (aspiration && !got.Contains("GHS08"))
        {
            wanted.Remove("GHS08");
        }

        // A limit for a class that the entry itself does not have (irritant to the airways from 5 % on, beside corrosive) is for
        // mixtures; the columns are the substance's.
        HashSet<string> fromLimits =
        [
            .. entry.Limits.Where(l => entry.Claims.All(c => c.Category.Group != l.Category.Group)).Select(l => l.Category.Statement.Text),
        ];
        if (fromLimits.Contains("H335") && !wanted.Contains("GHS07"))
        {
            got.Remove("GHS07");
        }

        if (!wanted.SetEquals(got))
        {
            yield return $"pictograms {string.Join(' ', got)} instead of {string.Join(' ', wanted)}";
        }

        if (!leftOut && lawSigns.Any(s => s is "Dgr" or "Wng"))
        {
            string word = lawSigns.Contains("Dgr") ? "Danger" : "Warning";
            if (label.SignalWord?.Text != word)
            {
                yield return $"signal word {label.SignalWord?.Text} instead of {word}";
            }
        }

        HashSet<string> told =
        [
            .. statements
                .Split('|', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                .Select(s => s.Split(' ')[0])
                .Where(s => s.StartsWith('H') && s[1] != '2' && s != "H304"),
        ];
        HashSet<string> said = [.. label.Hazard.Select(h => h.Text).Where(s => s[0] == 'H')];
        said.ExceptWith(fromLimits.Except(told));
        if (!told.SetEquals(said))
        {
            yield return $"statements {string.Join(' ', said)} instead of {string.Join(' ', told)}";
        }
    }

    private static Composition Alone(HarmonisedEntry entry) =>
        TestLaw.Mixture(
            TestLaw.Line("the substance", 100, []) with
            {
                Claims = [.. entry.Claims],
                SpecificLimits = entry.Limits,
                AcuteM = entry.AcuteM,
                ChronicM = entry.ChronicM,
                Toxicity = entry.Toxicity,
            }
        );
}
