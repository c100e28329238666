using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Files;
using Chandlery.Register;
using Chandlery.Yaml;

namespace Chandlery.Workbench.Forms;

/// <summary>A declaration of any kind on the desk: its text with edits and what is wrong with it.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="Id">Its name; for a new one the name that it would get.</param>
/// <param name="File">Its file, below the maker's folder.</param>
/// <param name="OnDisk">The text on disk; null for a new one.</param>
/// <param name="Yaml">The text with the edits.</param>
/// <param name="Declared">What it declares; null when it cannot be read.</param>
/// <param name="Problems">What is wrong.</param>
internal sealed record FormDesk(
    string Kind,
    string Id,
    string File,
    string? OnDisk,
    string Yaml,
    IDeclaration? Declared,
    IReadOnlyList<Problem> Problems
)
{
    /// <summary>The maker's folder as it was when the declaration was laid on the desk.</summary>
    public required DeclarationFolder Folder { get; init; }

    /// <summary>The text with the edits as a tree; null when it cannot be read.</summary>
    public YamlMap? Map { get; } = YamlText.Read(Yaml, "", new Problems());

    /// <summary>Hash of the text on disk; null for a new declaration.</summary>
    public string? Hash => OnDisk is null ? null : RegisterFile.Sha256(OnDisk);

    /// <summary>Lays a declaration on the desk, a new one when it has no name; null when there is none of that kind and name.</summary>
    public static FormDesk? Lay(Workroom room, FormRequest request)
    {
        DeclarationFolder folder = room.Folder();
        bool isNew = string.IsNullOrEmpty(request.Id);
        var problems = new Problems();
        string yaml = $"declares: {request.Declares}\n";
        string id = isNew ? DeclaredFile.NewId(folder, request.Declares, NameIn(request.Edits)) : request.Id!;
        if (DeclaredFile.Of(folder, request.Declares, id) is not { } file)
        {
            return null;
        }

        string path = Path.Combine(room.Root, file);
        string? onDisk = System.IO.File.Exists(path) ? TextFile.Read(path, file, problems) : null;
        if (!isNew && onDisk is null)
        {
            return null;
        }

        try
        {
            yaml = FieldEdits.Apply(onDisk ?? yaml, request.Edits);
        }
        catch (FormatException error)
        {
            problems.Add(new TextPlace(path, 0, 0), error.Message);
            yaml = onDisk ?? yaml;
        }

        IDeclaration? declared = OutlineFiles.With(
            new DeclarationReader(room.Lawbook.Vocabulary).Read(yaml, path, id, problems),
            path,
            problems
        );
        return new FormDesk(request.Declares, id, file, onDisk, yaml, declared, problems.Found) { Folder = folder };
    }

    // The name of a new declaration's file comes from what it is called.
    private static string NameIn(IReadOnlyList<FieldEdit>? edits) =>
        (edits ?? [])
            .Where(e => e.Path is [{ ValueKind: System.Text.Json.JsonValueKind.String } only] && only.GetString() is "name" or "code")
            .Select(e => e.Value is { ValueKind: System.Text.Json.JsonValueKind.String } value ? value.GetString()! : "")
            .FirstOrDefault()
        ?? "";
}
