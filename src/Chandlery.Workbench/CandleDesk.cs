using System.Globalization;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Files;
using Chandlery.Register;
using Chandlery.Yaml;

namespace Chandlery.Workbench;

/// <summary>A candle on the desk: its text with edits, what it declares, and what follows.</summary>
/// <param name="Id">Name of the declaration.</param>
/// <param name="File">Its file.</param>
/// <param name="Hash">Hash of the text on disk, by which a later save knows whether somebody else changed it.</param>
/// <param name="Yaml">The text with the edits.</param>
/// <param name="Candle">What it declares; null when it cannot be read.</param>
/// <param name="Catalogue">The folder with this candle in place of the one on disk.</param>
/// <param name="Assessments">One for each edition; empty when there are problems.</param>
/// <param name="Problems">What is wrong.</param>
internal sealed record CandleDesk(
    string Id,
    string File,
    string Hash,
    string Yaml,
    Candle? Candle,
    Catalogue Catalogue,
    IReadOnlyList<Assessment> Assessments,
    IReadOnlyList<Problem> Problems
)
{
    /// <summary>Lays a candle or batch of the folder on the desk; null when the folder declares none of that name.</summary>
    public static CandleDesk? Lay(Workroom room, string id, CandleEdits? edits, DateOnly asOf)
    {
        DeclarationFolder folder = room.Folder();
        IDeclaration? declared =
            folder.Catalogue.All.FirstOrDefault(d => d.Id == id && d is Candle)
            ?? folder.Catalogue.All.FirstOrDefault(d => d.Id == id && d is Batch);
        var problems = new Problems();
        if (declared is null || TextFile.Read(declared.Place.File, Path.GetFileName(declared.Place.File), problems) is not { } onDisk)
        {
            return null;
        }

        string file = declared.Place.File;
        string shown = Path.GetRelativePath(room.Root, file);
        string yaml = onDisk;
        if (edits is not null && declared is Candle)
        {
            try
            {
                yaml = edits.ApplyTo(onDisk, OilsOf((Candle)declared));
            }
            catch (FormatException error)
            {
                problems.Add(new TextPlace(shown, 0, 0), error.Message);
            }
        }

        IDeclaration? edited = yaml == onDisk ? declared : new DeclarationReader(room.Lawbook.Vocabulary).Read(yaml, shown, id, problems);
        Catalogue catalogue =
            edited is null || edited == declared
                ? folder.Catalogue
                : new Catalogue(folder.Catalogue.All.Select(d => d == declared ? edited : d), problems, folder.Catalogue.Wrong);
        IReadOnlyList<Assessment> assessments =
            problems.None && edited is not null ? new Assessor(room.Lawbook, catalogue, asOf).Assess(edited, null, problems) : [];
        return new CandleDesk(
            id,
            file,
            RegisterFile.Sha256(onDisk),
            yaml,
            edited as Candle,
            catalogue,
            problems.None ? assessments : [],
            problems.Found
        );
    }

    /// <summary>The blend as the page edits it.</summary>
    public static IReadOnlyList<OilEdit> OilsOf(Candle candle) =>
        [
            .. candle.Oils.Select(o => new OilEdit(
                o.Oil.Id,
                o.Amount.ToString(CultureInfo.InvariantCulture),
                o.Measure.ToString().ToLowerInvariant()
            )),
        ];
}
