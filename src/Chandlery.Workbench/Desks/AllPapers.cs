using System.Text;
using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Core.Law;
using Chandlery.Files;
using Chandlery.Paper.Papers;

namespace Chandlery.Workbench.Desks;

/// <summary>All papers of a candle in one file.</summary>
internal static class AllPapers
{
    /// <summary>The papers as PDF under their names, the assessment, and a list of the papers that there are none of, with the reason.</summary>
    public static byte[] Zip(Workroom room, CandleDesk desk)
    {
        var files = new List<PendingFile>();
        var missing = new StringBuilder();
        foreach (Assessment a in desk.Assessments)
        {
            string folder = desk.Assessments.Count > 1 ? $"{a.Edition.Id}/" : "";
            foreach ((PaperKind paper, Language language) in room.Papers.DossierOf(a))
            {
                switch (DeskPapers.Make(room, desk, a, paper, new PaperWish(Edition: a.Edition.Id, Language: language.Code)))
                {
                    case MadePaper made:
                        files.Add(new PendingFile($"{folder}{paper.FileName(a, language)}.pdf", made.Pdf()));
                        break;
                    case MissingPaper { IsDue: true } none:
                        missing.AppendLine(DeskPapers.Sentence(paper, none));
                        break;
                }
            }
        }

        files.Add(new PendingFile("assessment.json", Encoding.UTF8.GetBytes(AssessmentJson.Write(desk.Assessments))));
        if (missing.Length > 0)
        {
            files.Add(new PendingFile("not-printed.txt", Encoding.UTF8.GetBytes(missing.ToString())));
        }

        return ZippedFiles.Of(files);
    }
}
