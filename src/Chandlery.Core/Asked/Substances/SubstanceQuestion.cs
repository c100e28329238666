using Chandlery.Core.Classified;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Law.AnnexVi;

namespace Chandlery.Core.Asked.Substances;

/// <summary>Asks what the law says of a substance on a day: now, before, and what is to come.</summary>
/// <param name="edition">The law of the place.</param>
/// <param name="day">The day.</param>
public sealed class SubstanceQuestion(Edition edition, DateOnly day)
{
    private readonly SubstanceList list = edition.Substances;
    private readonly HarmonisedClasses here = edition.Harmonised;

    /// <summary>An answer for each entry that holds; one without an entry where none does.</summary>
    /// <param name="identity">The substance.</param>
    /// <param name="heldBy">What holds it.</param>
    public IReadOnlyList<SubstanceAnswer> Ask(SubstanceIdentity identity, IReadOnlyList<HolderAnswer> heldBy)
    {
        Listing listing = list.Find(identity, day, here);
        IReadOnlyList<EntryHistory> histories = list.HistoriesOf(identity);
        return listing.Entries.Count == 0
            ? [Unlisted(identity, listing, histories, heldBy)]
            : [.. listing.Entries.Select(e => Listed(e, identity, listing, histories, heldBy))];
    }

    private SubstanceAnswer Listed(
        HarmonisedEntry entry,
        SubstanceIdentity identity,
        Listing listing,
        IReadOnlyList<EntryHistory> histories,
        IReadOnlyList<HolderAnswer> heldBy
    ) =>
        Unlisted(identity, listing, histories, heldBy) with
        {
            Index = entry.IndexNumber,
            Cas = [.. entry.Members.Select(m => m.Cas).OfType<string>()],
            Ec = [.. entry.Members.Select(m => m.Ec).OfType<string>()],
            Names =
            [
                .. listing
                    .NamesIn(entry)
                    .Concat(Trade(listing))
                    .Prepend(PrintedName.Of(identity, listing))
                    .Distinct(StringComparer.OrdinalIgnoreCase),
            ],
            Conditions = entry.Conditions,
            Classes = [.. entry.Classes.Select(Class)],

            // A limit sets a share C a bound, or two: "5 % <= C < 25 %".
            Limits = [.. entry.Figures.Where(f => f.Split(' ').Contains("C"))],
            MFactors = new FactorAnswer(
                entry.Claims.Any(c => c.Category.MultipliedBy == MFactorKind.Acute) ? entry.AcuteM : null,
                entry.Claims.Any(c => c.Category.MultipliedBy == MFactorKind.Chronic) ? entry.ChronicM : null
            ),
            Ate = [.. entry.Figures.Where(f => f.Contains("ATE = ", StringComparison.Ordinal))],
            Notes = [.. entry.Notes.Select(n => new NoteAnswer(n, list.Table?.Rules.Note(n)?.Means ?? ""))],
            Act = entry.Act.Title,
            Celex = entry.Act.Celex,
            AppliesFrom = entry.From,
        };

    private SubstanceAnswer Unlisted(
        SubstanceIdentity identity,
        Listing listing,
        IReadOnlyList<EntryHistory> histories,
        IReadOnlyList<HolderAnswer> heldBy
    )
    {
        ILookup<bool, HarmonisedEntry> versions = histories
            .SelectMany(h => h.Versions)
            .OrderBy(v => v.From)
            .ThenBy(v => v.Act.Order)
            .ToLookup(v => list.IsTakenOver(v.Act, here));
        return new SubstanceAnswer
        {
            Index = null,
            Cas = [.. new[] { identity.Cas?.Text ?? listing.Known?.Cas }.OfType<string>()],
            Ec = [.. new[] { identity.Ec?.Text ?? listing.Known?.Ec }.OfType<string>()],
            Names = [.. Trade(listing).DefaultIfEmpty(identity.Name).Distinct(StringComparer.OrdinalIgnoreCase)],
            Conditions = [],
            Classes = [],
            Limits = [],
            MFactors = new FactorAnswer(null, null),
            Ate = [],
            Notes = [],
            Act = null,
            Celex = null,
            AppliesFrom = null,
            Before =
            [
                .. versions[true].Where(v => v.From <= day && !listing.Entries.Contains(v)).Reverse().Select(v => Version(v, identity)),
            ],
            Pending =
            [
                .. versions[true].Where(v => v.From > day).Select(v => Version(v, identity)),
                .. versions[false].Where(v => v.From > day).Select(v => Later(v, identity, listing)),
                .. listing.Expected.Select(Draft),
            ],
            Elsewhere = [.. versions[false].Where(v => v.From <= day).Reverse().Select(v => Later(v, identity, listing))],
            Binds = here.Bind,
            HeldBy = heldBy,
            Remarks = [.. ListingRemarks.Of(identity, [], listing, list, here), .. OnLabels(identity)],
        };
    }

    // What it puts on a label, whatever its class.
    private IEnumerable<string> OnLabels(SubstanceIdentity identity) =>
        IngredientStatements
            .On(edition, day)
            .Where(s => identity.Cas is { } cas && s.Cas.Contains(cas.Text))
            .Select(s =>
                $"a mixture with {s.From} of it or more bears {s.Statement} ({s.Clause}){(s.Stricter.Length == 0 ? "" : $"; {s.Stricter}")}."
            );

    private static IEnumerable<string> Trade(Listing listing) => (listing.Known?.Names ?? []).Concat(listing.Known?.AllergenRows ?? []);

    private static ClassAnswer Class(HarmonisedClass c)
    {
        const string Open = " **";
        string[] parts = c.Text.Split(", ", 2);
        string statement = parts.Length > 1 ? parts[1] : "";
        return new ClassAnswer(
            parts[0].Replace(" *", "", StringComparison.Ordinal),
            statement.Replace(Open, "", StringComparison.Ordinal),
            c.IsMinimum,
            statement.Contains(Open, StringComparison.Ordinal),
            c.Claim is not null
        );
    }

    private VersionAnswer Later(HarmonisedEntry entry, SubstanceIdentity identity, Listing listing)
    {
        VersionAnswer version = Version(entry, identity);
        string later = here.LaterOf(listing.CasNumbers);
        return version with { Says = version.Says.Length == 0 ? later : $"{version.Says}; {later}" };
    }

    private static VersionAnswer Version(HarmonisedEntry entry, SubstanceIdentity identity) =>
        entry.Stands && entry.Member(identity) is null
            ? new VersionAnswer(entry.Act.Title, entry.From, entry.IndexNumber, [], [], "the entry does not cover this substance")
            : new VersionAnswer(
                entry.Act.Title,
                entry.From,
                entry.IndexNumber,
                [.. entry.Classes.Select(c => c.Text)],
                entry.Figures,
                entry.Stands ? "" : "the entry was taken out"
            );

    // Where not every act is taken over, a draft of the Union is not what is to come there.
    private VersionAnswer Draft(ExpectedClasses expected) =>
        new(
            expected.Act,
            null,
            "",
            [.. expected.Claims.Select(c => $"{c.Category.Code}, {c.Statement}")],
            [],
            $"{(here.UpTo.Length == 0 ? "" : "in the European Union: ")}{expected.Says}; {expected.Source}; not law and not applied"
        );
}
