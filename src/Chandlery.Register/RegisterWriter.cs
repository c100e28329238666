using System.Security.Cryptography;
using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Register;

/// <summary>Makes register entries of assessed candles.</summary>
public static class RegisterWriter
{
    /// <summary>Name of the register's file in a maker's folder.</summary>
    public const string FileName = "register.sqlite";

    /// <summary>What an entry says, with the texts of the declarations behind it.</summary>
    /// <param name="a">The assessment.</param>
    /// <param name="folder">The maker's folder.</param>
    /// <param name="catalogue">Its declarations.</param>
    /// <param name="documents">Documents issued: name and bytes.</param>
    /// <param name="problems">Collects declarations that cannot be read again.</param>
    public static (RegisterContent Content, IReadOnlyDictionary<string, string> Texts) Content(
        Assessment a,
        string folder,
        Catalogue catalogue,
        IReadOnlyList<(string Name, byte[] Bytes)> documents,
        Problems problems
    )
    {
        var texts = new Dictionary<string, string>();
        var used = new List<UsedDeclaration>();
        foreach (string file in Files(a, catalogue).Distinct().Order(StringComparer.Ordinal))
        {
            if (TextFile.Read(file, file, problems) is { } text)
            {
                string hash = RegisterFile.Sha256(text);
                texts[hash] = text;
                used.Add(new UsedDeclaration(Path.GetRelativePath(folder, file).Replace('\\', '/'), hash));
            }
        }

        var content = new RegisterContent(
            a.BatchCode ?? a.Id,
            a.Id,
            a.Candle.Name,
            a.Edition.Id,
            IsoDay.Plain(a.AsOf),
            IsoDay.Plain(a.Edition.LookedUp),
            AssessmentJson.Write(a),
            used,
            [.. a.Composition.Recipe.Oils.Select(o => new UsedOil(o.Oil.Id, o.Oil.Name, o.Oil.Document, IsoDay.Plain(o.Oil.Revised)))],
            [.. a.Substances.Select(s => new HeldSubstance(s.Name, s.Ingredient.Identity.Cas?.Text ?? "", s.Ingredient.WholeHigh.Value))],
            [.. documents.Select(d => new IssuedDocument(d.Name, Convert.ToHexStringLower(SHA256.HashData(d.Bytes))))]
        );
        return (content, texts);
    }

    // Every declaration that the result rests on.
    private static IEnumerable<string> Files(Assessment a, Catalogue catalogue)
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
