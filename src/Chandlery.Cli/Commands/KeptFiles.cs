using System.Text;
using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary>What is kept inside a PDF for an archive: the declarations that it rests on, and the assessments.</summary>
internal static class KeptFiles
{
    /// <summary>The files, each name once.</summary>
    /// <param name="folder">The maker's folder.</param>
    /// <param name="assessments">Whose paper it is.</param>
    /// <exception cref="IOException">A declaration cannot be read again.</exception>
    public static IReadOnlyList<PdfAttachment> Of(DeclarationFolder folder, IReadOnlyList<Assessment> assessments)
    {
        var files = new Dictionary<string, PdfAttachment>();
        var problems = new Problems();
        foreach (Assessment a in assessments)
        {
            foreach ((string name, string text) in UsedFiles.Read(a, folder.Root, folder.Catalogue, problems))
            {
                files[name] = new PdfAttachment(name, "application/yaml", Encoding.UTF8.GetBytes(text), "Declared by the maker");
            }

            string assessment = $"assessment-{a.Id}-{a.Edition.Id}.json";
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
