using Chandlery.Core.Declared;

namespace Chandlery.Workbench.Forms;

/// <summary>Finds what names a declaration.</summary>
internal static class Users
{
    /// <summary>What people call the candles, batches, waxes and lots that name it.</summary>
    public static IEnumerable<string> Of(Catalogue catalogue, string kind, string id) =>
        catalogue.All.Where(d => ReferencesOf(d, kind, id).Any()).Select(Called).Distinct();

    /// <summary>Where a declaration names another one.</summary>
    public static IEnumerable<Reference> ReferencesOf(IDeclaration declared, string kind, string id) =>
        References.Of(declared).Where(r => r.To.Id == id && Means(kind, r.Kind)).Select(r => r.To);

    // A base is a wax of another name.
    private static bool Means(string kind, Type named) => DeclaredFile.KindOf(named) == kind || (kind == "base" && named == typeof(Wax));

    private static string Called(IDeclaration declared) =>
        declared switch
        {
            Candle c => c.Name,
            Wax w => w.Name,
            Batch b => b.Code,
            Lot l => l.Code,
            Trial trial => trial.Name,
            GiftSet set => set.Name,
            _ => declared.Id,
        };
}
