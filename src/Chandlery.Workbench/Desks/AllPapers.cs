using System.IO.Compression;
using System.Text;
using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Core.Law;
using Chandlery.Paper.Papers;

namespace Chandlery.Workbench.Desks;

/// <summary>All papers of a candle in one file.</summary>
internal static class AllPapers
{
    /// <summary>The papers as PDF under their names, the assessment, and a list of the papers that there are none of, with the reason.</summary>
    public static byte[] Zip(Workroom room, CandleDesk desk)
    {
        using var bytes = new MemoryStream();
        using (var archive = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            var missing = new StringBuilder();
            foreach (Assessment a in desk.Assessments)
            {
                string folder = desk.Assessments.Count > 1 ? $"{a.Edition.Id}/" : "";
                foreach ((PaperKind paper, Language language) in room.Papers.DossierOf(a))
                {
                    switch (DeskPapers.Make(room, desk, a, paper, new PaperWish(Edition: a.Edition.Id, Language: language.Code)))
                    {
                        case MadePaper made:
                            Add(archive, $"{folder}{paper.FileName(a, language)}.pdf", made.Pdf());
                            break;
                        case MissingPaper { IsDue: true } none:
                            missing.AppendLine(DeskPapers.Sentence(paper, none));
                            break;
                    }
                }
            }

            Add(archive, "assessment.json", Encoding.UTF8.GetBytes(AssessmentJson.Write(desk.Assessments)));
            if (missing.Length > 0)
            {
                Add(archive, "not-printed.txt", Encoding.UTF8.GetBytes(missing.ToString()));
            }
        }

        return bytes.ToArray();
    }

    private static void Add(ZipArchive archive, string name, byte[] content)
    {
        using Stream entry = archive.CreateEntry(name).Open();
        entry.Write(content);
    }
}
