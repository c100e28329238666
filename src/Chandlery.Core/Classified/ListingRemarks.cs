using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Yaml;

namespace Chandlery.Core.Classified;

/// <summary>What the maker must be told of a substance's entries, beyond the classes that they bring.</summary>
internal static class ListingRemarks
{
    public static IEnumerable<string> Of(
        SubstanceIdentity identity,
        IReadOnlyList<Contribution> parts,
        Listing listing,
        SubstanceList list,
        HarmonisedClasses here
    )
    {
        string name = identity.Name;
        if (OfAnother(identity, listing, list) is { } another)
        {
            yield return another;
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
                    string codes = string.Join(", ", classes);
                    yield return met.Contains(note)
                        ? $"{name}: {codes} ({here.Cite(entry)}) is left off, because its sheet is declared to meet note {note.Note}: {note.Means}."
                        : $"{name}: {codes} ({here.Cite(entry)}) comes with note {note.Note}: {note.Means}. If the supplier's document shows that, write 'notesMet: [{note.Note}]' with the substance.";
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

    /// <summary>The notes of an entry whose condition every sheet of the substance is declared to meet.</summary>
    public static IEnumerable<AnnexNote> NotesMet(IReadOnlyList<Contribution> parts, HarmonisedEntry entry, SubstanceList list) =>
        NotesOf(entry, list).Where(n => n.Lets.Count > 0 && parts.Count > 0 && parts.All(p => p.Ingredient.NotesMet.Contains(n.Note)));

    /// <summary>
    /// A name that goes with another number than the one that it stands with: one of the two is wrong, and the number decides what
    /// counts. Null where nothing is amiss, and where the name is not known.
    /// </summary>
    public static string? OfAnother(SubstanceIdentity identity, Listing listing, SubstanceList list)
    {
        List<KnownSubstance> named = [.. list.Named(identity.Name)];
        string plain = PlainText.Of(identity.Name);
        if (
            identity.Cas is not { } cas
            || named.Count == 0
            || named.Exists(k => k.Cas == cas.Text)
            || listing.Entries.SelectMany(e => e.Member(identity)?.Names ?? []).Any(n => PlainText.Of(n) == plain)
        )
        {
            return null;
        }

        string numbers = string.Join(" or ", named.Select(k => k.Cas));
        string whose = listing.Known is { } known ? $", which is that of {known.Names[0]}" : "";
        return $"{identity.Name} goes by CAS number {numbers}, and stands here with {cas.Text}{whose}: one of the two is wrong, and the number decides which classes count. Compare them with the sheet.";
    }

    private static IEnumerable<AnnexNote> NotesOf(HarmonisedEntry entry, SubstanceList list) =>
        entry.Notes.Select(n => list.Table?.Rules.Note(n)).OfType<AnnexNote>();
}
