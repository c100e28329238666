using Chandlery.Core.Declared;
using Chandlery.Core.Law;

namespace Chandlery.Core.Classified;

/// <summary>
/// Tells which substances may be of a kind whose irritation does not add up (CLP Annex I, 3.2.3.3.4.1: acids, bases,
/// inorganic salts, aldehydes, phenols, surfactants). The list of substances decides; for others the name is taken as a
/// hint, because a hint too many costs a look and a hint too few may cost more.
/// </summary>
internal static class NonAdditiveKinds
{
    private static readonly (string Fragment, string Kind)[] Hints =
    [
        ("aldehyde", "aldehyde"),
        ("cinnamal", "aldehyde"),
        ("citral", "aldehyde"),
        ("vanillin", "aldehyde and phenol"),
        ("piperonal", "aldehyde"),
        ("ctanal", "aldehyde"),
        ("nonanal", "aldehyde"),
        ("decanal", "aldehyde"),
        ("undecanal", "aldehyde"),
        ("undecenal", "aldehyde"),
        ("hexenal", "aldehyde"),
        ("propanal", "aldehyde"),
        ("citronellal", "aldehyde"),
        ("phenol", "phenol"),
        ("eugenol", "phenol"),
        ("guaiacol", "phenol"),
        ("thymol", "phenol"),
        ("carvacrol", "phenol"),
        ("cresol", "phenol"),
        ("salicylate", "phenol"),
        ("acid", "acid"),
        ("sulfonate", "surfactant"),
        ("hydroxide", "base"),
        ("amine", "base"),
    ];

    /// <summary>The kind, or null.</summary>
    public static string? Of(SubstanceIdentity identity, KnownSubstance? known) =>
        known?.NonAdditiveKind ?? Hints.FirstOrDefault(h => identity.Name.Contains(h.Fragment, StringComparison.OrdinalIgnoreCase)).Kind;
}
