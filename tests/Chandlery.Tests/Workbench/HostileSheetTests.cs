using System.Diagnostics;
using System.IO.Compression;
using System.Net;
using System.Text;
using Chandlery.Intake.Pages;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Workbench;

/// <summary>What suppliers' PDFs can do to the local page: the program that serves it runs as users start it.</summary>
public sealed class HostileSheetTests
{
    private const int DeeperThanAnyStack = 60_000;
    private const string Text = "BT /F1 10 Tf 50 700 Td (Enough letters to be the text of a sheet that somebody could read) Tj ET\n";

    [Fact]
    public async Task A_pdf_that_kills_its_reader_leaves_the_page_running_and_is_refused()
    {
        using var tool = new Tool();
        using Process page = Command.Start(tool.Folder, "workbench", tool.Folder, "--no-browser");
        try
        {
            var wayIn = new Uri((await page.StandardOutput.ReadLineAsync())!);
            using var client = new HttpClient { BaseAddress = new Uri(wayIn.GetLeftPart(UriPartial.Authority)) };
            client.DefaultRequestHeaders.Add("X-Workbench", "1");
            await client.GetAsync(wayIn);

            (HttpStatusCode code, string said) = await Drop(client, Nested());
            Assert.Equal(HttpStatusCode.UnprocessableEntity, code);
            Assert.Contains("or it made the reader fail", said, StringComparison.Ordinal);

            Assert.False(page.HasExited);
            byte[] sheet = File.ReadAllBytes(Path.Combine(Intake.CorpusScore.Folder, "dune.own-lines-en.pdf"));
            (code, said) = await Drop(client, sheet);
            Assert.True(code == HttpStatusCode.OK, said);
        }
        finally
        {
            page.Kill(entireProcessTree: true);
        }
    }

    [Fact]
    public void A_pdf_of_countless_lines_is_refused()
    {
        string reason = PdfWords.Parse(Unpacking(to => Boxes(to, 26_000))).Reason ?? "";
        Assert.Contains("ruled lines", reason, StringComparison.Ordinal);
    }

    private static async Task<(HttpStatusCode Code, string Said)> Drop(HttpClient client, byte[] pdf)
    {
        using var body = new MultipartFormDataContent { { new ByteArrayContent(pdf), "files", "hostile.pdf" } };
        using HttpResponseMessage answer = await client.PostAsync("/api/sheets", body);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync());
    }

    // Each node of the page tree holds only the next one: a reader that calls itself for each runs out of stack, which ends its process.
    private static byte[] Nested() =>
        Pdf([
            "<< /Type /Catalog /Pages 2 0 R >>",
            .. Enumerable.Range(3, DeeperThanAnyStack).Select(next => $"<< /Type /Pages /Kids [{next} 0 R] /Count 1 >>"),
            $"<< /Type /Page /Parent {DeeperThanAnyStack + 1} 0 R /MediaBox [0 0 595 842] >>",
        ]);

    // Four lines each.
    private static void Boxes(Stream to, int count) =>
        to.Write(Encoding.ASCII.GetBytes(string.Concat(Enumerable.Range(0, count).Select(i => $"10 {i % 800} 80 80 re S\n"))));

    // A page of one sentence and of what is written behind it, all packed.
    private static byte[] Unpacking(Action<Stream> write)
    {
        using var packed = new MemoryStream();
        using (var deflate = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            deflate.Write(Encoding.ASCII.GetBytes(Text));
            write(deflate);
        }

        return Pdf([
            "<< /Type /Catalog /Pages 2 0 R >>",
            "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
            "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] /Contents 5 0 R /Resources << /Font << /F1 4 0 R >> >> >>",
            "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>",
            $"<< /Length {packed.Length} /Filter /FlateDecode >>\nstream\n{Encoding.Latin1.GetString(packed.ToArray())}\nendstream",
        ]);
    }

    private static byte[] Pdf(IReadOnlyList<string> objects)
    {
        using var file = new MemoryStream();
        var places = new List<long>();
        void Write(string text) => file.Write(Encoding.Latin1.GetBytes(text));
        Write("%PDF-1.4\n");
        foreach (string one in objects)
        {
            places.Add(file.Position);
            Write($"{places.Count} 0 obj\n{one}\nendobj\n");
        }

        long table = file.Position;
        Write($"xref\n0 {places.Count + 1}\n0000000000 65535 f \n{string.Concat(places.Select(p => $"{p:0000000000} 00000 n \n"))}");
        Write($"trailer\n<< /Size {places.Count + 1} /Root 1 0 R >>\nstartxref\n{table}\n%%EOF\n");
        return file.ToArray();
    }
}
