using System.Diagnostics;
using Chandlery.Core.Assessed;
using Chandlery.Paper.Drawing;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Sheets;

/// <summary>What a paper says, read back with poppler's pdftotext, so that another program than ours says what the PDF holds.</summary>
internal static class PrintedText
{
    /// <summary>The text of a paper of a candle in a language.</summary>
    public static string Of(string paper, Assessment a, string language)
    {
        Assessment inLanguage = a with { Languages = [TestLaw.Lawbook.FindLanguage(language)!] };
        return Of(PdfDrawing.Draw(TestLaw.Made(paper, inLanguage).Document));
    }

    /// <summary>The text of a PDF, its lines joined by blanks.</summary>
    public static string Of(byte[] pdf)
    {
        string file = Path.Combine(Directory.CreateTempSubdirectory().FullName, "paper.pdf");
        File.WriteAllBytes(file, pdf);
        using Process reader = Process.Start(new ProcessStartInfo("pdftotext", ["-raw", file, "-"]) { RedirectStandardOutput = true })!;
        return reader.StandardOutput.ReadToEnd().ReplaceLineEndings(" ");
    }
}
