using System.Text.RegularExpressions;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Law.AnnexVi;
using Chandlery.Yaml;

namespace Chandlery.Core.Asked.Substances;

/// <summary>Finds the substances that a person means by a CAS, EC or index number or by a name.</summary>
public static partial class SubstanceSearch
{
    private const int MostSuggested = 8;

    /// <summary>The substances, or why none was found and what to write instead.</summary>
    public static Parsed<IReadOnlyList<SubstanceIdentity>> Find(SubstanceList list, string query)
    {
        string asked = query.Trim();
        if (IndexForm().IsMatch(asked))
        {
            return ByIndex(list, asked);
        }

        if (CasNumber.Parse(asked) is { Success: true } cas)
        {
            return Parsed.As<IReadOnlyList<SubstanceIdentity>>([new SubstanceIdentity(NameOf(list, asked), cas.Value, null)]);
        }

        if (EcNumber.Parse(asked) is { Success: true } ec)
        {
            return Parsed.As<IReadOnlyList<SubstanceIdentity>>([new SubstanceIdentity(NameOf(list, asked), null, ec.Value)]);
        }

        if (NumberForm().IsMatch(asked))
        {
            return Parsed.Not<IReadOnlyList<SubstanceIdentity>>(CasNumber.Parse(asked).Reason + " Nor is it an EC number.");
        }

        return ByName(list, asked);
    }

    private static Parsed<IReadOnlyList<SubstanceIdentity>> ByIndex(SubstanceList list, string index)
    {
        EntryHistory? entry = list.Table?.Entries(index).FirstOrDefault();
        return entry is null
            ? Parsed.Not<IReadOnlyList<SubstanceIdentity>>($"The table of harmonised classes has no index number {index}.")
            : Parsed.As<IReadOnlyList<SubstanceIdentity>>([Identity(Numbered(entry.Versions[^1].Members))]);
    }

    // An entry for a group may name the group first, which has no number.
    private static EntryMember Numbered(IReadOnlyList<EntryMember> members) =>
        members.FirstOrDefault(m => m.Cas is not null || m.Ec is not null) ?? members[0];

    private static Parsed<IReadOnlyList<SubstanceIdentity>> ByName(SubstanceList list, string name)
    {
        string plain = PlainText.Of(name);
        IReadOnlyList<SubstanceIdentity> known =
        [
            .. list.Named(name).Select(k => new SubstanceIdentity(k.Names[0], CasNumber.Parse(k.Cas).Value, null)),
        ];
        if (known.Count > 0)
        {
            return Parsed.As(known);
        }

        List<EntryMember> members = [.. list.Table?.All().SelectMany(h => h.Versions[^1].Members) ?? []];
        IReadOnlyList<SubstanceIdentity> listed =
        [
            .. members.Where(m => m.Names.Any(n => PlainText.Of(n) == plain)).Select(Identity).Distinct(),
        ];
        if (listed.Count > 0)
        {
            return Parsed.As(listed);
        }

        List<string> near =
        [
            .. list
                .Known.SelectMany(k => k.Names)
                .Concat(members.SelectMany(m => m.Names))
                .Where(n => plain.Length > 2 && PlainText.Of(n).Contains(plain, StringComparison.Ordinal))
                .Distinct(StringComparer.OrdinalIgnoreCase)
                .OrderBy(n => n.Length)
                .Take(MostSuggested),
        ];
        if (near.Count == 0 && Suggestion.Nearest(name, list.Known.SelectMany(k => k.Names)) is { } guess)
        {
            near.Add(guess);
        }

        string remedy = near.Count == 0 ? " Ask by its CAS number." : $" Did you mean: {string.Join("; ", near)}?";
        return Parsed.Not<IReadOnlyList<SubstanceIdentity>>($"No substance goes by the name '{name}' here.{remedy}");
    }

    private static SubstanceIdentity Identity(EntryMember member) =>
        new(
            member.Names.Count > 0 ? member.Names[0] : "",
            member.Cas is { } cas ? CasNumber.Parse(cas).OrNull() : null,
            member.Ec is { } ec ? EcNumber.Parse(ec).OrNull() : null
        );

    private static string NameOf(SubstanceList list, string number) =>
        list.KnownAs(new SubstanceIdentity("", CasNumber.Parse(number).OrNull(), EcNumber.Parse(number).OrNull()))?.Names[0] ?? number;

    [GeneratedRegex("^[0-9]{3}-[0-9]{3}-[0-9]{2}-[0-9X]$", RegexOptions.CultureInvariant)]
    private static partial Regex IndexForm();

    [GeneratedRegex("^[0-9]+-[0-9]+-[0-9]$", RegexOptions.CultureInvariant)]
    private static partial Regex NumberForm();
}
