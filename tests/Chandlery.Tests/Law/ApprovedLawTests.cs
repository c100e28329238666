using System.Globalization;
using System.Text;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Notified;
using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>
/// Every rung of every rule, just reached and just missed, alone and added up, with all that is said about it: classes,
/// workings, sentences, label elements and what was left off. The approved text was read in parts; a difference means
/// that somebody must read again. Limits themselves are checked against the law in the other tests of this folder.
/// </summary>
public sealed class ApprovedLawTests
{
    private static readonly string Approved = Path.Combine(Bench.Repository, "tests", "Chandlery.Tests", "Law", "approved.txt");

    [Fact]
    public void Everything_that_is_said_about_every_rung_is_as_approved()
    {
        var text = new StringBuilder();
        foreach (string id in new[] { "eu-clp", "un-ghs" })
        {
            Edition edition = Bench.Lawbook.Edition(id);
            // The GHS differs in limits, which have tests of their own, not in how things are said.
            foreach (LimitRule rule in id == "eu-clp" ? edition.Rules.OfType<LimitRule>() : [])
            {
                foreach ((Rung rung, int r) in rule.Rungs.Select((rung, r) => (rung, r)))
                {
                    Rungs(text, edition, rule, rung, r);
                }
            }

            Others(text, edition);
        }

        string now = text.ToString();
        string received = Path.Combine(AppContext.BaseDirectory, "approved-received.txt");
        if (!File.Exists(Approved) || File.ReadAllText(Approved) != now)
        {
            File.WriteAllText(received, now);
            Assert.Fail(
                $"What is said has changed. Read the difference between {received} and tests/Chandlery.Tests/Law/approved.txt; if it is right, copy it there."
            );
        }
    }

    private static void Rungs(StringBuilder text, Edition edition, LimitRule rule, Rung rung, int r)
    {
        foreach ((Term term, int t) in rung.Terms.Select((term, t) => (term, t)))
        {
            HazardCategory hazard = term.Hazards[0];
            double m = term.M == MFactorKind.None ? 1 : 10;
            double alone = Math.Min(100, rung.Limit.Value / (term.Weight * m));
            Say(text, edition, $"{rule.Group} {r}.{t} reached", [Line("alpha", hazard, alone, m)], classesOnly: true);
            Say(text, edition, $"{rule.Group} {r}.{t} missed", [Line("alpha", hazard, alone * 0.999, m)], classesOnly: true);
            Say(
                text,
                edition,
                $"{rule.Group} {r}.{t} in two",
                [Line("alpha", hazard, alone * 0.5, m), Line("beta", hazard, alone * 0.6, m)],
                classesOnly: true
            );
        }
    }

    private static void Others(StringBuilder text, Edition edition)
    {
        Ingredient Of(string name, double percent, params string[] classes) => Bench.Line(name, percent, classes, m: 1);
        Say(text, edition, "nothing", [Of("alpha", 1)]);
        Say(
            text,
            edition,
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
        Say(
            text,
            edition,
            "own limits",
            [
                Bench.Line("alpha", 0.02, ["Skin Sens. 1A, H317"], ["Skin Sens. 1A, H317:0.01"]),
                Bench.Line("beta", 3, ["Skin Irrit. 2, H315"], ["Skin Irrit. 2, H315:5"]),
            ]
        );
        Say(text, edition, "own limits, elicitation", [Bench.Line("alpha", 0.002, ["Skin Sens. 1A, H317"], ["Skin Sens. 1A, H317:0.01"])]);
        Say(text, edition, "M unknown", [Bench.Line("alpha", 30, ["Aquatic Acute 1, H400", "Aquatic Chronic 1, H410"])]);
        Say(text, edition, "letters agree", [Of("alpha", 5, "Repr. 2, H361d"), Of("beta", 5, "Repr. 2, H361d")]);
        Say(text, edition, "letters differ", [Of("alpha", 5, "Repr. 2, H361d"), Of("beta", 5, "Repr. 2, H361f")]);
        Say(
            text,
            edition,
            "aldehydes",
            [
                Of("nonanal", 0.9, "Skin Irrit. 2, H315"),
                Of("eugenol", 2, "Skin Irrit. 2, H315", "Eye Irrit. 2, H319"),
                Of("citronellal", 4, "Eye Irrit. 2, H319"),
            ]
        );
        Say(text, edition, "unknown", [Silent("alpha", 2), Of("beta", 0.5, "Skin Sens. 1B, H317")]);
        Say(text, edition, "not computed", [Of("alpha", 2, "Flam. Liq. 3, H226", "Asp. Tox. 1, H304", "EUH066")]);
        Say(
            text,
            edition,
            "small and mixed",
            [Of("alpha", 12, "Skin Irrit. 2, H315"), Of("beta", 1.5, "Skin Sens. 1B, H317"), Of("gamma", 30, "Aquatic Chronic 3, H412")]
        );
        Say(
            text,
            edition,
            "several irritants",
            [Of("alpha", 15, "Skin Irrit. 2, H315"), Of("beta", 20, "Eye Irrit. 2, H319"), Of("gamma", 30, "Aquatic Chronic 2, H411")]
        );
        Say(
            text,
            edition,
            "sensitisers by weight",
            [Of("alpha", 0.2, "Skin Sens. 1B, H317"), Of("beta", 0.05, "Skin Sens. 1A, H317"), Of("gamma", 0.5, "Resp. Sens. 1, H334")]
        );
        Say(
            text,
            edition,
            "classified and named",
            [Of("alpha", 0.2, "Skin Sens. 1B, H317"), Of("beta", 2, "Skin Sens. 1B, H317"), Of("gamma", 12, "Skin Irrit. 2, H315")]
        );
        foreach (string route in new[] { "H300", "H301", "H302", "H310", "H311", "H312", "H330", "H331", "H332" })
        {
            string category = route[3] switch
            {
                '0' => "2",
                '1' => "3",
                _ => "4",
            };
            foreach (double percent in new[] { 0.05, 0.5, 5, 40 })
            {
                Say(
                    text,
                    edition,
                    $"acute {route} at {percent.ToString(CultureInfo.InvariantCulture)}",
                    [Of("alpha", percent, $"Acute Tox. {category}, {route}"), Of("beta", percent / 2, $"Acute Tox. {category}, {route}")]
                );
            }
        }

        foreach (ExposureRoute route in Enum.GetValues<ExposureRoute>())
        {
            string code = route switch
            {
                ExposureRoute.Oral => "H302",
                ExposureRoute.Dermal => "H312",
                _ => "H332",
            };
            Say(
                text,
                edition,
                $"estimate {route}",
                [Bench.Line("alpha", 30, [$"Acute Tox. 4, {code}"], ate: [new ToxicityEstimate(route, 3)]), Silent("beta", 15)]
            );
        }
    }

    private static Ingredient Line(string name, HazardCategory hazard, double percent, double m)
    {
        Ingredient line = Bench.Line(name, percent, [], m: m);
        return line with { Claims = [new HazardClaim(hazard, hazard.Statement)] };
    }

    private static Ingredient Silent(string name, double percent) => Bench.Line(name, percent, []) with { Claims = null };

    private static void Say(StringBuilder text, Edition edition, string title, Ingredient[] lines, bool classesOnly = false)
    {
        if (lines.Sum(l => l.Share.High.Value) > 100)
        {
            return;
        }

        Composition composition = Bench.Mixture(lines);
        Verdict verdict = Bench.Law(edition).Judge(composition);
        IReadOnlyList<Substance> substances = verdict.Substances;
        Classification c = verdict.Classification;
        text.Append(CultureInfo.InvariantCulture, $"== {edition.Id}, {title}\n");
        foreach (ClassResult result in c.Classes)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"{result.Category.Code} {result.Statement} by {string.Join('+', result.Causes.Select(s => s.Name))}\n"
            );
            Say(text, result.Working);
        }

        foreach (Sensitiser s in c.Sensitisers)
        {
            text.Append(CultureInfo.InvariantCulture, $"sensitiser {s.Substance.Name} {s.Hazard.Category.Code}\n");
            Say(text, s.Working);
        }

        if (c.UnknownToxicity is { } unknown)
        {
            text.Append(CultureInfo.InvariantCulture, $"unknown {unknown.Share} ({unknown.Clause})\n");
        }

        if (classesOnly)
        {
            return;
        }

        LabelElements label = verdict.Label;
        foreach ((string kind, IEnumerable<LabelChoice> choices) in Choices(label))
        {
            foreach (LabelChoice choice in choices)
            {
                text.Append(CultureInfo.InvariantCulture, $"{kind} {choice.Text}: {choice.Because} ({choice.Clause})\n");
            }
        }

        foreach (NamedSubstance named in label.Named)
        {
            text.Append(CultureInfo.InvariantCulture, $"named {named.Name}: {named.Because} ({named.Clause})\n");
        }

        foreach (StatementChoice gone in SmallPackages.MayLeaveOff(edition, c, label, new Millilitres(125)))
        {
            text.Append(CultureInfo.InvariantCulture, $"small {gone.Text}: {gone.Because} ({gone.Clause})\n");
        }

        foreach (string open in verdict.Unassessed())
        {
            text.Append(CultureInfo.InvariantCulture, $"open {open}\n");
        }

        foreach ((string what, Citation clause) in verdict.WhereAddingMayFail())
        {
            text.Append(CultureInfo.InvariantCulture, $"adding {what} ({clause})\n");
        }

        foreach (PoisonFact fact in PoisonFacts.Ingredients(Bench.Eu.PoisonCentres!, substances))
        {
            text.Append(CultureInfo.InvariantCulture, $"poison {fact.Name} {fact.Band} {fact.Hazards}\n");
        }

        text.Append(
            CultureInfo.InvariantCulture,
            $"sheet {SheetDuties.Find(edition.SafetySheet, c, substances).Duty}, names {string.Join('+', SheetDuties.Named(edition.SafetySheet, substances).Select(s => s.Name))}\n"
        );
    }

    private static IEnumerable<(string, IEnumerable<LabelChoice>)> Choices(LabelElements label) =>
        [
            ("pictogram", label.Pictograms),
            ("signal word", label.SignalWord is { } word ? [word] : []),
            ("hazard", label.Hazard),
            ("supplemental", label.Supplemental),
            ("precaution", label.Precautionary),
            ("left off", label.LeftOff),
        ];

    private static void Say(StringBuilder text, Working w)
    {
        string Number(double value) => Figures.Plain(value);
        text.Append(
            CultureInfo.InvariantCulture,
            $"  {w.Formula}: {Number(w.Value)} against {Number(w.Threshold)} {w.Unit}; {w.Clause}; {w.Confidence}\n  {w.Sentence}\n"
        );
        foreach (WorkingLine l in w.Lines)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"    {l.Substance} {l.Cas} {l.Hazard} {Number(l.Percent)} x {Number(l.Factor)} limit {Number(l.Limit)} adds {Number(l.Adds)} by {l.Source}\n"
            );
        }
    }
}
