using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;

namespace Chandlery.Core.Classified;

/// <summary>What the maker must be told of a substance's entries, beyond the classes that they bring.</summary>
internal static class ListingRemarks
{
    public static IEnumerable<string> Of(
        SubstanceIdentity identity,
        IReadOnlyList<Contribution> parts,
        Listing listing,
        SubstanceList list,
        HarmonisedClasses here,
        PhysicalState? state = null
    )
    {
        string name = identity.Name;
        foreach (string another in OfAnother(identity, list))
        {
            yield return another;
        }

        if (ByName(identity, parts, listing, here) is { } byName)
        {
            yield return byName;
        }

        foreach (HarmonisedEntry entry in listing.Entries)
        {
            foreach (string figure in entry.Unread)
            {
                yield return $"{name}: the limit '{figure}' ({here.Cite(entry)}) is in a form that is not computed here: look it up.";
            }

            HashSet<AnnexNote> met = [.. NotesMet(parts, entry, list)];
            foreach (AnnexNote note in NotesOf(entry, list))
            {
                List<string> classes = [.. entry.Claims.Where(c => note.Lets.Contains(c.Category.Group)).Select(c => c.Category.Code)];
                if (classes.Count > 0)
                {
                    yield return WithNote(name, string.Join(", ", classes), here.Cite(entry), note, met.Contains(note), state);
                }
                else if (note.IsTold)
                {
                    yield return $"{name}: note {note.Note} of its entry ({here.Cite(entry)}) is not computed here: {note.Means}.";
                }
            }
        }

        foreach (HarmonisedEntry group in listing.Groups)
        {
            string classes = string.Join(", ", group.Classes.Select(c => c.Text));
            yield return $"{name} may be one of '{group.Members[0].Names[0]}' ({here.Cite(group)}: {classes}), which is not decided here: ask the supplier, and declare the classes that it then has.";
        }

        foreach (ExpectedClasses expected in here is { Bind: true, UpTo.Length: 0 } ? listing.Expected : [])
        {
            yield return $"{name}: expected, not law and not applied: {string.Join(", ", expected.Claims.Select(c => c.Category.Code))} by {expected.Act}; it {expected.Says} ({expected.Source}).";
        }
    }

    /// <summary>The notes of an entry that leave classes of it off: by the product's state, or by what every sheet is declared to meet.</summary>
    public static IEnumerable<AnnexNote> NotesLetting(
        IReadOnlyList<Contribution> parts,
        HarmonisedEntry entry,
        SubstanceList list,
        PhysicalState? state
    ) => NotesMet(parts, entry, list).Concat(NotesOf(entry, list).Where(n => IsNotIn(n, state)));

    // The classes of an entry that one of its notes speaks of.
    private static string WithNote(string name, string codes, string entry, AnnexNote note, bool isMet, PhysicalState? state)
    {
        if (IsNotIn(note, state))
        {
            return $"{name}: {codes} ({entry}) does not count in this product, by note {note.Note}: {note.Means}.";
        }

        if (isMet)
        {
            return $"{name}: {codes} ({entry}) is left off, because its sheet is declared to meet note {note.Note}: {note.Means}.";
        }

        return note.NotIn.Count > 0
            ? $"{name}: {codes} ({entry}) comes with note {note.Note}: {note.Means}."
            : $"{name}: {codes} ({entry}) comes with note {note.Note}: {note.Means}. If the supplier's document shows that, write 'notesMet: [{note.Note}]' with the substance.";
    }

    private static bool IsNotIn(AnnexNote note, PhysicalState? state) => state is { } known && note.NotIn.Contains(known);

    private static IEnumerable<AnnexNote> NotesMet(IReadOnlyList<Contribution> parts, HarmonisedEntry entry, SubstanceList list) =>
        NotesOf(entry, list)
            .Where(n =>
                n.NotIn.Count == 0 && n.Lets.Count > 0 && parts.Count > 0 && parts.All(p => p.Ingredient.NotesMet.Contains(n.Note))
            );

    // A name and numbers that do not belong together: one of them is wrong, whichever counts.
    private static IEnumerable<string> OfAnother(SubstanceIdentity identity, SubstanceList list)
    {
        var check = new NumberCheck(list);
        string name = identity.Name;
        if (check.CasOfName(identity) is { Count: > 0 } cas)
        {
            yield return $"{name} goes by CAS number {Or(cas)}, and stands here with {identity.Cas}{Whose(identity, list)}: one of the two is wrong, and the number decides which classes count. Compare them with the sheet.";
        }

        if (check.EcOfName(identity) is { Count: > 0 } ec)
        {
            yield return $"{name} goes by EC number {Or(ec)}, and stands here with {identity.Ec}{Whose(identity, list)}: one of the two is wrong, and the number decides which classes count. Compare them with the sheet.";
        }

        if (check.CasOfEc(identity) is { Count: > 0 } owners)
        {
            string whose = Whose(identity with { Cas = null }, list);
            yield return $"{name} stands here with CAS number {identity.Cas} and EC number {identity.Ec}, which goes with CAS number {Or(owners)}{whose}: one of the two is wrong. The CAS number decides which classes count, and the EC number only where no entry has the other. Compare them with the sheet.";
        }
    }

    private static string Or(IReadOnlyList<string> numbers) => string.Join(" or ", numbers);

    private static string Whose(SubstanceIdentity identity, SubstanceList list) =>
        list.KnownAs(identity) is { } known ? $", which is that of {known.Names[0]}" : "";

    // The table gives classes to substances, not to numbers (CLP Art. 4(3)): a name that is exactly one of its own, or of the trade, is
    // enough. Where several go by the name, the worst of them counts: the stricter reading.
    private static string? ByName(SubstanceIdentity identity, IReadOnlyList<Contribution> parts, Listing listing, HarmonisedClasses here)
    {
        // A product that is known only as a whole has a name of its maker's, and no number.
        if (identity.Cas is not null || identity.Ec is not null || parts.Count == 0 || parts.Any(p => p.Product == identity.Name))
        {
            return null;
        }

        string[] cited = [.. listing.Entries.Select(here.Cite), .. listing.Elsewhere.Select(here.CiteLater)];
        return listing.Meant.Count switch
        {
            0 =>
                $"{identity.Name}: no number is declared, and no list here has that name, so its harmonised classes could not be looked up. Ask the supplier for its CAS or EC number.",
            1 when cited.Length > 0 =>
                $"{identity.Name}: no number is declared; what the law says of that name counts ({string.Join("; ", cited)}). Declare its CAS number.",
            > 1 when cited.Length > 0 =>
                $"{identity.Name}: no number is declared, and several substances go by that name; the worst that the law says of any of them counts ({string.Join("; ", cited)}). Declare its CAS number.",
            _ => null,
        };
    }

    private static IEnumerable<AnnexNote> NotesOf(HarmonisedEntry entry, SubstanceList list) =>
        entry.Notes.Select(n => list.Table?.Rules.Note(n)).OfType<AnnexNote>();
}
