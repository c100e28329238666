using System.Globalization;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law.Approved;

/// <summary>
/// Every rung of every rule, just reached and just missed, alone and added up, and mixtures in which rules meet. Limits
/// themselves are checked against the law in the cases beside its rows.
/// </summary>
internal static class ApprovedFiles
{
    private const string Base = "un-ghs";

    private static readonly (string Category, string Statement)[] Categories =
    [
        ("2", "H300"),
        ("3", "H301"),
        ("4", "H302"),
        ("2", "H310"),
        ("3", "H311"),
        ("4", "H312"),
        ("2", "H330"),
        ("3", "H331"),
        ("4", "H332"),
    ];

    /// <summary>All files, in order.</summary>
    public static IReadOnlyList<ApprovedFile> All { get; } =
    [.. OfRules(TestLaw.Eu), .. OfSubjects(TestLaw.Eu), .. OfSubjects(TestLaw.Lawbook.Edition(Base))];

    // The GHS differs in limits, which its cases check, not in how things are said: it has no files of rules.
    private static IEnumerable<ApprovedFile> OfRules(Edition edition) =>
        edition.Rules.OfType<LimitRule>().Select(rule => new ApprovedFile(edition, rule.Group, [.. Rungs(rule)]));

    private static IEnumerable<ApprovedMixture> Rungs(LimitRule rule)
    {
        foreach ((Rung rung, int r) in rule.Rungs.Select((rung, r) => (rung, r)))
        {
            foreach ((Term term, int t) in rung.Terms.Select((term, t) => (term, t)))
            {
                HazardCategory hazard = term.Hazards[0];
                double m = term.M == MFactorKind.None ? 1 : 10;
                double alone = Math.Min(100, rung.Limit.Value / (term.Weight * m));
                string step = $"{rule.Group} {r}.{t}";
                yield return new ApprovedMixture($"{step} reached", [Line("alpha", hazard, alone, m)], ClassesOnly: true);
                yield return new ApprovedMixture($"{step} missed", [Line("alpha", hazard, alone * 0.999, m)], ClassesOnly: true);
                if (alone * 1.1 <= 100)
                {
                    Ingredient[] two = [Line("alpha", hazard, alone * 0.5, m), Line("beta", hazard, alone * 0.6, m)];
                    yield return new ApprovedMixture($"{step} in two", two, ClassesOnly: true);
                }
            }
        }
    }

    private static IEnumerable<ApprovedFile> OfSubjects(Edition edition) =>
        Meetings()
            .Select(m => new ApprovedFile(edition, m.Title, [m]))
            .Concat(Categories.Select(c => new ApprovedFile(edition, $"acute {c.Statement}", [.. Acute(c.Category, c.Statement)])))
            .Concat(Enum.GetValues<ExposureRoute>().Select(r => new ApprovedFile(edition, $"estimate {r}", [Estimate(r)])));

    private static IEnumerable<ApprovedMixture> Meetings()
    {
        yield return new ApprovedMixture("nothing", [Of("alpha", 1)]);
        yield return new ApprovedMixture(
            "all at once",
            [
                Of("alpha", 5, "Skin Corr. 1B, H314"),
                Of("beta", 5, "Eye Dam. 1, H318"),
                Of("gamma", 2, "Skin Sens. 1A, H317"),
                Of("delta", 3, "Resp. Sens. 1, H334"),
                Of("epsilon", 30, "Aquatic Acute 1, H400", "Aquatic Chronic 1, H410"),
                Of("zeta", 1, "Repr. 1B, H360FD"),
                Of("eta", 2, "STOT SE 3, H336"),
            ]
        );
        yield return new ApprovedMixture(
            "own limits",
            [
                TestLaw.Line("alpha", 0.02, ["Skin Sens. 1A, H317"], ["Skin Sens. 1A, H317:0.01"]),
                TestLaw.Line("beta", 3, ["Skin Irrit. 2, H315"], ["Skin Irrit. 2, H315:5"]),
            ]
        );
        yield return new ApprovedMixture(
            "own limits, elicitation",
            [TestLaw.Line("alpha", 0.002, ["Skin Sens. 1A, H317"], ["Skin Sens. 1A, H317:0.01"])]
        );
        yield return new ApprovedMixture("M unknown", [TestLaw.Line("alpha", 30, ["Aquatic Acute 1, H400", "Aquatic Chronic 1, H410"])]);
        yield return new ApprovedMixture("letters agree", [Of("alpha", 5, "Repr. 2, H361d"), Of("beta", 5, "Repr. 2, H361d")]);
        yield return new ApprovedMixture("letters differ", [Of("alpha", 5, "Repr. 2, H361d"), Of("beta", 5, "Repr. 2, H361f")]);
        yield return new ApprovedMixture(
            "aldehydes",
            [
                Of("nonanal", 0.9, "Skin Irrit. 2, H315"),
                Of("eugenol", 2, "Skin Irrit. 2, H315", "Eye Irrit. 2, H319"),
                Of("citronellal", 4, "Eye Irrit. 2, H319"),
            ]
        );
        yield return new ApprovedMixture("unknown", [Silent("alpha", 2), Of("beta", 0.5, "Skin Sens. 1B, H317")]);
        yield return new ApprovedMixture("not computed", [Of("alpha", 2, "Flam. Liq. 3, H226", "Asp. Tox. 1, H304", "EUH066")]);
        yield return new ApprovedMixture(
            "small and mixed",
            [Of("alpha", 12, "Skin Irrit. 2, H315"), Of("beta", 1.5, "Skin Sens. 1B, H317"), Of("gamma", 30, "Aquatic Chronic 3, H412")]
        );
        yield return new ApprovedMixture(
            "several irritants",
            [Of("alpha", 15, "Skin Irrit. 2, H315"), Of("beta", 20, "Eye Irrit. 2, H319"), Of("gamma", 30, "Aquatic Chronic 2, H411")]
        );
        yield return new ApprovedMixture(
            "sensitisers by weight",
            [Of("alpha", 0.2, "Skin Sens. 1B, H317"), Of("beta", 0.05, "Skin Sens. 1A, H317"), Of("gamma", 0.5, "Resp. Sens. 1, H334")]
        );
        yield return new ApprovedMixture(
            "classified and named",
            [Of("alpha", 0.2, "Skin Sens. 1B, H317"), Of("beta", 2, "Skin Sens. 1B, H317"), Of("gamma", 12, "Skin Irrit. 2, H315")]
        );
    }

    private static IEnumerable<ApprovedMixture> Acute(string category, string statement)
    {
        string hazard = $"Acute Tox. {category}, {statement}";
        return new[] { 0.05, 0.5, 5, 40 }.Select(percent => new ApprovedMixture(
            $"acute {statement} at {percent.ToString(CultureInfo.InvariantCulture)}",
            [Of("alpha", percent, hazard), Of("beta", percent / 2, hazard)]
        ));
    }

    private static ApprovedMixture Estimate(ExposureRoute route)
    {
        string statement = route switch
        {
            ExposureRoute.Oral => "H302",
            ExposureRoute.Dermal => "H312",
            _ => "H332",
        };
        return new ApprovedMixture(
            $"estimate {route}",
            [TestLaw.Line("alpha", 30, [$"Acute Tox. 4, {statement}"], ate: [new ToxicityEstimate(route, 3)]), Silent("beta", 15)]
        );
    }

    private static Ingredient Of(string name, double percent, params string[] classes) => TestLaw.Line(name, percent, classes, m: 1);

    private static Ingredient Line(string name, HazardCategory hazard, double percent, double m) =>
        TestLaw.Line(name, percent, [], m: m) with
        {
            Claims = [new HazardClaim(hazard, hazard.Statement)],
        };

    private static Ingredient Silent(string name, double percent) => TestLaw.Line(name, percent, []) with { Claims = null };
}
