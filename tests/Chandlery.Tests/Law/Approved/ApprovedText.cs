using System.Globalization;
using System.Text;
using Chandlery.Core.Classified;
using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Notified;
using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law.Approved;

/// <summary>What the program says about a mixture: classes, workings, sentences, label elements and what was left off.</summary>
internal static class ApprovedText
{
    /// <summary>Adds all that is said about a mixture.</summary>
    public static void Say(StringBuilder text, Edition edition, ApprovedMixture mixture)
    {
        Verdict verdict = TestLaw.Law(edition).Judge(TestLaw.Mixture(mixture.Lines));
        IReadOnlyList<Substance> substances = verdict.Substances;
        Classification c = verdict.Classification;
        text.Append(CultureInfo.InvariantCulture, $"== {edition.Id}, {mixture.Title}\n");
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

        if (mixture.ClassesOnly)
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

        foreach (string open in verdict.Unassessed)
        {
            text.Append(CultureInfo.InvariantCulture, $"open {open}\n");
        }

        foreach ((string what, Citation clause) in verdict.WhereAddingMayFail)
        {
            text.Append(CultureInfo.InvariantCulture, $"adding {what} ({clause})\n");
        }

        foreach (PoisonFact fact in PoisonFacts.Ingredients(TestLaw.Eu.PoisonCentres!, substances))
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
            $"  {w.Formula}: {(w.Value is { } value ? Number(value) : "a document")} against {Number(w.Threshold)} {w.Unit}; {w.Clause}; {w.Confidence}\n  {w.Sentence}\n"
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
