using System.Text;
using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary>What is kept inside a PDF for an archive: the declarations that it rests on, and the assessments.</summary>
internal static class KeptFiles
{
    /// <summary>The files, each name once: what comes from several folders has the folder's number before its name.</summary>
    /// <param name="folderOf">The folder that a candle lies in.</param>
    /// <param name="assessments">Whose paper it is.</param>
    /// <param name="also">Declarations that the paper shows beside those that an assessment rests on.</param>
    /// <exception cref="IOException">A declaration cannot be read again.</exception>
    public static IReadOnlyList<PdfAttachment> Of(
        Func<Assessment, DeclarationFolder> folderOf,
        IReadOnlyList<Assessment> assessments,
        Func<Assessment, Catalogue, IEnumerable<IDeclaration>> also
    )
    {
        var files = new Dictionary<string, PdfAttachment>();
        var problems = new Problems();
        List<string> roots = [.. assessments.Select(a => Path.GetFullPath(folderOf(a).Root)).Distinct()];
        foreach (Assessment a in assessments)
        {
            DeclarationFolder folder = folderOf(a);
            string before = roots.Count == 1 ? "" : $"{roots.IndexOf(Path.GetFullPath(folder.Root)) + 1}/";
            foreach ((string file, string text) in UsedFiles.Read(a, folder.Root, folder.Catalogue, problems, also(a, folder.Catalogue)))
            {
                string name = before + file;
                files[name] = new PdfAttachment(name, "application/yaml", Encoding.UTF8.GetBytes(text), "Declared by the maker");
            }

            string assessment = $"{before}assessment-{a.Id}-{a.Edition.Id}.json";
            files[assessment] = new PdfAttachment(
                assessment,
                "application/json",
                Encoding.UTF8.GetBytes(AssessmentJson.Write(a)),
                $"Assessment of {a.Candle.Name} under {a.Edition.Id}"
            );
        }

        return problems.None ? [.. files.Values] : throw new IOException(problems.Found[0].ToString());
    }
}
