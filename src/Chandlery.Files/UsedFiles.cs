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
    public static IReadOnlyList<(string Name, string Text)> Read(Assessment a, string folder, Catalogue catalogue, Problems problems)
    {
        var texts = new List<(string, string)>();
        foreach (string file in Of(a, catalogue).Distinct().Order(StringComparer.Ordinal))
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
