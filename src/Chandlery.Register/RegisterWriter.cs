using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
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
    /// <param name="keeps">Whether the documents' bytes are to be kept in the register too: see <see cref="Kept"/>.</param>
    public static (RegisterContent Content, IReadOnlyDictionary<string, string> Texts) Content(
        Assessment a,
        string folder,
        Catalogue catalogue,
        IReadOnlyList<(string Name, byte[] Bytes)> documents,
        Problems problems,
        bool keeps = false
    )
    {
        var texts = new Dictionary<string, string>();
        var used = new List<UsedDeclaration>();
        foreach ((string name, string text) in UsedFiles.Read(a, folder, catalogue, problems))
        {
            string hash = RegisterFile.Sha256(text);
            texts[hash] = text;
            used.Add(new UsedDeclaration(name, hash));
        }

        var content = new RegisterContent
        {
            Batch = a.BatchCode ?? a.Id,
            Subject = a.Id,
            Candle = a.Candle.Name,
            Edition = a.Edition.Id,
            AsOf = IsoDay.Plain(a.AsOf),
            LawLookedUp = IsoDay.Plain(a.Edition.LookedUp),
            Result = AssessmentJson.Write(a),
            Declarations = used,
            Oils =
            [
                .. a.Composition.Recipe.Oils.Select(o => new UsedOil(o.Oil.Id, o.Oil.Name, o.Oil.Document, IsoDay.Plain(o.Oil.Revised))),
            ],
            Substances =
            [
                .. a.Substances.Select(s => new HeldSubstance(s.Name, s.Ingredient.Identity.Cas?.Text ?? "", s.Ingredient.WholeHigh.Value)),
            ],
            Documents = [.. documents.Select(d => new IssuedDocument(d.Name, HeldDocuments.HashOf(d.Bytes), keeps))],
        };
        return (content, texts);
    }

    /// <summary>The bytes of documents by their hash.</summary>
    public static IReadOnlyDictionary<string, byte[]> Kept(IReadOnlyList<(string Name, byte[] Bytes)> documents)
    {
        var kept = new Dictionary<string, byte[]>();
        foreach ((_, byte[] bytes) in documents)
        {
            kept[HeldDocuments.HashOf(bytes)] = bytes;
        }

        return kept;
    }
}
