using Chandlery.Core.Classified;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Limits;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Assessed;

/// <summary>Turns results into what the maker must know.</summary>
internal static class FindingList
{
    public static IEnumerable<Finding> Of(
        Subject subject,
        Edition edition,
        IReadOnlyList<Substance> substances,
        Classification classification,
        Func<Oil, IReadOnlyList<string>> contradictions,
        IReadOnlyList<Language> languages
    ) =>
        [
            .. Stops(subject, edition, substances, classification),
            .. subject
                .Limits.Where(l => l.Holds is null)
                .Select(l => new Finding(Gravity.Look, $"Not checked: {l.Name}. {l.Explanation}", "")),
            .. OpenQuestions
                .NonAdditive(edition, substances, classification.Classes)
                .Select(q => new Finding(Gravity.Look, q.What, q.Clause)),
            .. subject.Recipe.Oils.SelectMany(o => contradictions(o.Oil)).Select(text => new Finding(Gravity.Look, text, "")),
            .. Consumer(edition, classification),
            .. languages
                .Where(l => !l.IsVerified)
                .Select(l => new Finding(
                    Gravity.Look,
                    $"The statements in {l.Name} were {l.Checked}.",
                    "CLP Art. 17(2) and Annexes III and IV"
                )),
            .. subject.Composition.Remarks.Select(r => new Finding(Gravity.Look, r, "")),
            .. substances
                .SelectMany(s => s.Remarks)
                .Distinct()
                .Select(r => new Finding(Gravity.Look, r, edition.HarmonisedClassesBind ? "CLP Art. 4(3)" : "")),
        ];

    private static IEnumerable<Finding> Stops(
        Subject subject,
        Edition edition,
        IReadOnlyList<Substance> substances,
        Classification classification
    )
    {
        foreach (LimitCheck check in subject.Limits.Where(l => l.Holds == false))
        {
            yield return new Finding(
                Gravity.Stop,
                $"Limit broken: {check.Name}: {Figures.Plain(check.Value!.Value)} {check.Unit}, at most {Figures.Plain(check.Limit!.Value)} is allowed. {check.Explanation}",
                ""
            );
        }

        foreach (Oil oil in subject.Recipe.Oils.Select(o => o.Oil).Where(o => o.IsUnreviewed))
        {
            yield return new Finding(
                Gravity.Stop,
                $"{oil.Name} was drafted from {string.Join(", ", oil.Draft!.Files)} by a program, and nobody has compared it with the PDF yet: check it, then write who did so under 'reviewed' ({oil.Draft.Place}).",
                ""
            );
        }

        foreach (Substance substance in substances.Where(s => !s.IsKnown))
        {
            yield return new Finding(
                Gravity.Stop,
                $"{substance.Ingredient.Identity.Name} is listed without hazard classes, so the label cannot be shown to be complete. Ask the supplier, then write its classes or 'classes: not classified'.",
                "CLP Art. 9"
            );
        }

        foreach (ClassResult result in classification.Classes.Where(c => IsBannedForThePublic(c.Category)))
        {
            yield return new Finding(
                Gravity.Stop,
                $"The candle is {result.Category.Code}: such a mixture may not be sold to the general public in the European Union, and elsewhere a competent person must decide.",
                "REACH Annex XVII, entries 28 to 30"
            );
        }

        if (edition.EmergencyTelephone.Needed && subject.Maker.EmergencyTelephone is null)
        {
            yield return new Finding(
                Gravity.Stop,
                "The label needs an emergency telephone number: add 'emergencyTelephone' to the maker.",
                edition.EmergencyTelephone.Clause
            );
        }
    }

    // A consumer product without a GHS label: its classification is information, and a duty of another law may remain.
    private static IEnumerable<Finding> Consumer(Edition edition, Classification classification)
    {
        if (edition.LabelKind != LabelKind.Consumer)
        {
            yield break;
        }

        string classes = string.Join(", ", classification.Classes.Select(c => c.Category.Code));
        yield return new Finding(
            Gravity.Look,
            classes.Length == 0
                ? "Workplace classification (OSHA Hazard Communication Standard): none from what is declared."
                : $"Workplace classification (OSHA Hazard Communication Standard), for the shop and the safety data sheet only: {classes}.",
            "29 CFR 1910.1200, Appendix A"
        );
        yield return new Finding(
            Gravity.Look,
            classification.Classes.Count + classification.Sensitisers.Count == 0
                ? "Federal Hazardous Substances Act: nothing declared points to a hazardous substance; the Act judges the finished candle, so keep the evidence."
                : $"Federal Hazardous Substances Act: the finished candle must be judged (toxic, corrosive, irritant, strong sensitiser). Declared ingredients that call for a look: {string.Join(", ", classification.Classes.SelectMany(c => c.Causes).Concat(classification.Sensitisers.Select(s => s.Substance)).Select(s => s.Name).Distinct())}. A competent person decides whether a cautionary label is needed.",
            "15 U.S.C. 1261; 16 CFR 1500.3 and 1500.121"
        );
    }

    private static bool IsBannedForThePublic(HazardCategory category) =>
        (category.ClassCode is "Carc." or "Muta." or "Repr.") && (category.Category is "1A" or "1B");
}
