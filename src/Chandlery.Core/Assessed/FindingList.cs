using Chandlery.Core.Classified;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Limits;

namespace Chandlery.Core.Assessed;

/// <summary>Where results are looked at for what the maker must know.</summary>
internal static class FindingList
{
    public static IReadOnlyList<FindingSource> Of(
        Subject subject,
        Verdict verdict,
        Func<Oil, IReadOnlyList<string>> contradictions,
        IReadOnlyList<Language> languages
    )
    {
        Edition edition = verdict.Law.Edition;
        return
        [
            FindingSource.Stopping(() => Stops(subject, verdict)),
            FindingSource.Looking(() =>
                subject
                    .Limits.Where(l => l.Holds is null)
                    .Select(l => new Finding(Gravity.Look, $"Not checked: {l.Name}. {l.Explanation}", Citation.None))
            ),
            FindingSource.Looking(() => verdict.WhereAddingMayFail.Select(q => new Finding(Gravity.Look, q.What, q.Clause))),
            FindingSource.Looking(() =>
                subject.Recipe.Oils.SelectMany(o => contradictions(o.Oil)).Select(text => new Finding(Gravity.Look, text, Citation.None))
            ),
            FindingSource.Looking(() =>
                edition
                    .Notices.Where(n => Holds(n.When, verdict.Classification))
                    .Select(n => new Finding(Gravity.Look, Words(subject.Kind.Say(n.Says), verdict.Classification), n.Clause))
            ),
            FindingSource.Looking(() => languages.SelectMany(l => UnsureTexts(l, verdict))),
            FindingSource.Looking(() => NamesInAnotherLanguage(verdict, languages)),
            FindingSource.Looking(() => InnerPackageFinding.Of(subject, verdict)),
            FindingSource.Looking(() => Organs(verdict, edition)),
            FindingSource.Looking(() => subject.Composition.Remarks.Select(r => new Finding(Gravity.Look, r, Citation.None))),
            FindingSource.Looking(() =>
                verdict
                    .Substances.SelectMany(s => s.Remarks)
                    .Distinct()
                    .Select(r => new Finding(Gravity.Look, r, edition.Harmonised.Clause))
            ),
        ];
    }

    private static IEnumerable<Finding> UnsureTexts(Language language, Verdict verdict) =>
        StatementText
            .Unsure(language, verdict.Label)
            .Select(codes => new Finding(
                Gravity.Look,
                $"The {language.Name} text of {string.Join(", ", codes.Select(c => c.Text))} was {codes.Key.Checked}.",
                verdict.Law.Edition.Label.WordingClause
            ));

    private static IEnumerable<Finding> NamesInAnotherLanguage(Verdict verdict, IReadOnlyList<Language> languages)
    {
        Edition edition = verdict.Law.Edition;
        IReadOnlyList<string> others = ForeignNames.LanguagesOf(edition, languages);
        if (others.Count == 0)
        {
            yield break;
        }

        string languagesHere = string.Join(", ", others);
        ILookup<NameOrigin, string> named = verdict
            .Label.Named.Select(n => n.Name)
            .ToLookup(name => verdict.Substances.First(s => s.Name == name).NameOrigin);
        if (named[NameOrigin.Table].Any())
        {
            yield return new Finding(
                Gravity.Look,
                $"Names of substances are printed as the English table gives them; the table may have others in {languagesHere}: compare {string.Join(", ", named[NameOrigin.Table])} with it before you print.",
                edition.Naming.Clause
            );
        }

        if (named[NameOrigin.CosmeticsLaw].Any())
        {
            yield return new Finding(
                Gravity.Look,
                $"No entry of the table has {string.Join(", ", named[NameOrigin.CosmeticsLaw])}: printed by the international name of the cosmetics law, which is the same in {languagesHere}.",
                edition.Naming.Clause
            );
        }

        if (named[NameOrigin.Trade].Any())
        {
            yield return new Finding(
                Gravity.Look,
                $"No list of the law settles the name of {string.Join(", ", named[NameOrigin.Trade])}: printed as the trade or the supplier's sheet has it. See that it is an international name, or one in {languagesHere}.",
                edition.Naming.Clause
            );
        }
    }

    private static IEnumerable<Finding> Organs(Verdict verdict, Edition edition) =>
        verdict
            .Label.Hazard.Where(h => h.Organs.Length > 0)
            .Select(h => new Finding(
                Gravity.Look,
                $"{h.Code} names organs as the supplier writes them ({h.Organs}): see that they stand in the label's language.",
                edition.Label.WordingClause
            ));

    private static IEnumerable<Finding> Stops(Subject subject, Verdict verdict)
    {
        Edition edition = verdict.Law.Edition;
        foreach (Finding finding in BlendStops.Of(subject.Recipe, subject.Limits, subject.Kind, verdict))
        {
            yield return finding;
        }

        foreach (Doubt doubt in Doubts.Of(subject.Candle, subject.Batch, subject.Vessel, subject.Wax, subject.Recipe, subject.Declarant))
        {
            yield return new Finding(
                Gravity.Stop,
                $"{doubt.Place}: {doubt.What} Mend it, or if it is meant so, add 'confirmed: [{doubt.Field}]' to that file.",
                Citation.None
            );
        }

        foreach (Finding finding in UnnumberedTwins.Of(verdict).Concat(PackagingFindings.Of(subject.Vessel, verdict)))
        {
            yield return finding;
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

    private static bool Holds(NoticeWhen when, Classification c) =>
        when switch
        {
            NoticeWhen.Classified => c.Classes.Count > 0,
            NoticeWhen.NotClassified => c.Classes.Count == 0,
            NoticeWhen.Implicated => c.Classes.Count + c.Sensitisers.Count > 0,
            _ => c.Classes.Count + c.Sensitisers.Count == 0,
        };

    private static string Words(string says, Classification c) =>
        says.Replace("{classes}", string.Join(", ", c.Classes.Select(r => r.Category.Code)), StringComparison.Ordinal)
            .Replace(
                "{substances}",
                string.Join(
                    ", ",
                    c.Classes.SelectMany(r => r.Causes).Concat(c.Sensitisers.Select(s => s.Substance)).Select(s => s.Name).Distinct()
                ),
                StringComparison.Ordinal
            );
}
