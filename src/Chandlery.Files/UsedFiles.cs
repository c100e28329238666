using Chandlery.Core.Assessed;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>The declarations that an assessment rests on.</summary>
public static class UsedFiles
{
    /// <summary>Their texts, by name within the maker's folder, each once and in the order of names.</summary>
    /// <param name="a">The assessment.</param>
    /// <param name="folder">The maker's folder.</param>
    /// <param name="catalogue">Its declarations.</param>
    /// <param name="problems">Collects declarations that cannot be read again.</param>
    /// <param name="also">Declarations beside them; null for none.</param>
    public static IReadOnlyList<(string Name, string Text)> Read(
        Assessment a,
        string folder,
        Catalogue catalogue,
        Problems problems,
        IEnumerable<IDeclaration>? also = null
    )
    {
        var texts = new List<(string, string)>();
        IEnumerable<string> files = Of(a, catalogue).Concat((also ?? []).Select(d => d.Place.File));
        foreach (string file in files.Distinct().Order(StringComparer.Ordinal))
        {
            if (TextFile.Read(file, file, problems) is { } text)
            {
                texts.Add((Path.GetRelativePath(folder, file).Replace('\\', '/'), text));
            }
        }

        return texts;
    }

    private static IEnumerable<string> Of(Assessment a, Catalogue catalogue)
    {
        Recipe recipe = a.Composition.Recipe;
        IEnumerable<IDeclaration> all =
        [
            a.Candle,
            a.Maker,
            a.Vessel,
            .. a.Batch is { } batch ? [batch] : Array.Empty<IDeclaration>(),
            .. recipe.Oils.Select(o => o.Oil),
            .. recipe.Waxes.Select(w => w.Wax),
            .. recipe.Extras.Select(e => e.Extra),
            .. catalogue.Find<Wax>(a.Candle.Wax, new Problems()) is { } blend ? [blend] : Array.Empty<IDeclaration>(),
        ];
        return all.Select(d => d.Place.File);
    }
}
