using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Files;

namespace Chandlery.Workbench.Forms;

/// <summary>Where the declarations of a maker's folder lie.</summary>
internal static partial class DeclaredFile
{
    private const int LongestId = 60;

    // There is one of each, and it lies at the top.
    private static readonly string[] AtTheTop = ["maker", "brand"];

    /// <summary>The file of a declaration, below the folder; where it would lie when there is none yet. Null for no name or kind of ours.</summary>
    public static string? Of(DeclarationFolder folder, string kind, string id)
    {
        if (!DeclarationReader.Kinds.Contains(kind) || !Name().IsMatch(id) || id.Length > 2 * LongestId)
        {
            return null;
        }

        string? known =
            folder.Catalogue.All.FirstOrDefault(d => d.Id == id && KindOf(d) == kind)?.Place.File
            ?? folder.Catalogue.Wrong.FirstOrDefault(w => w.Id == id && w.Kind == kind)?.File;
        return known is not null ? Path.GetRelativePath(folder.Root, known).Replace('\\', '/')
            : AtTheTop.Contains(kind) ? $"{kind}.yaml"
            : $"{FolderOf(kind)}/{id}.yaml";
    }

    /// <summary>The kind of a declaration, as its file names it.</summary>
    public static string KindOf(IDeclaration declaration) =>
        declaration switch
        {
            Wax { IsBase: true } => "base",
            _ => KindOf(declaration.GetType()),
        };

    /// <summary>The kind of declarations of a type, as files name it.</summary>
    public static string KindOf(Type type) => type == typeof(GiftSet) ? "set" : type.Name.ToLowerInvariant();

    /// <summary>Whether a declaration's file can have any name: of some there is one alone.</summary>
    public static bool IsNamed(string kind) => !AtTheTop.Contains(kind);

    /// <summary>A name for a new declaration that no other of the folder has.</summary>
    public static string NewId(DeclarationFolder folder, string kind, string name)
    {
        if (AtTheTop.Contains(kind))
        {
            return kind;
        }

        string plain = NotPlain().Replace(Plain(name), "-").Trim('-');
        string first = plain.Length == 0 ? kind : plain[..Math.Min(plain.Length, LongestId)].Trim('-');
        return Enumerable
            .Range(1, int.MaxValue)
            .Select(n => n == 1 ? first : $"{first}-{n}")
            .First(id => Of(folder, kind, id) is { } file && !File.Exists(Path.Combine(folder.Root, file)));
    }

    private static string FolderOf(string kind) =>
        kind switch
        {
            "batch" or "wax" or "dispatch" => kind + "es",
            _ => kind + "s",
        };

    // Marks above letters go; what has no plain letter becomes a dash.
    private static string Plain(string name) =>
        string.Concat(
            name.Normalize(NormalizationForm.FormD)
                .Where(c => CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark)
                .Select(char.ToLowerInvariant)
        );

    [GeneratedRegex("^[A-Za-z0-9][A-Za-z0-9 _.-]*$")]
    private static partial Regex Name();

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex NotPlain();
}
