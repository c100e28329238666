using System.Diagnostics;
using System.IO.Compression;
using System.Text;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Hostile;
using Chandlery.Tests.Support;

namespace Chandlery.Tests;

/// <summary>The bounded share of the fuzzing that a nightly run does a million times: see DEVELOPERS.md.</summary>
public sealed class HostileTests
{
    private static readonly Lazy<Fuzzer> Shared = new(() => new Fuzzer());

    [Theory]
    [InlineData("declaration", 3000)]
    [InlineData("sheet text", 1500)]
    [InlineData("sheet page", 60)]
    [InlineData("csv", 800)]
    [InlineData("page edit", 800)]
    [InlineData("template", 150)]
    [InlineData("pdf", 40)]
    public void Bent_input_never_crashes(string kind, int cases)
    {
        var wrong = new System.Collections.Concurrent.ConcurrentBag<string>();
        Parallel.For(
            0,
            cases,
            i =>
            {
                string what = Shared.Value.Run(kind, i);
                if (what.Length > 0)
                {
                    wrong.Add(what);
                }
            }
        );
        Assert.Empty(wrong);
    }

    [Fact]
    public void Killed_commands_leave_whole_files_or_none() =>
        Assert.Empty(KillLoop.Run(Path.Combine(AppContext.BaseDirectory, "chandlery.dll"), 1));

    [NeedsOwnDisksFact]
    public void A_full_or_read_only_disk_loses_nothing() =>
        Assert.Empty(BadDisks.Run(Path.Combine(AppContext.BaseDirectory, "chandlery.dll"), "label", "draft", "register"));

    [Fact]
    public async Task A_PDF_that_unpacks_to_gigabytes_takes_no_more_than_its_bound()
    {
        const long bound = 1_500_000_000;
        string folder = Directory.CreateTempSubdirectory("chandlery-bomb-").FullName;
        string pdf = Path.Combine(folder, "bomb.pdf");
        await File.WriteAllBytesAsync(pdf, UnpacksTo(3_000_000_000));
        using Process process = Command.Start("", "measure", pdf, Path.Combine(TestLaw.DemoFolder, "candles", "fig-tin.yaml"));
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        Task<string> errors = process.StandardError.ReadToEndAsync();
        long most = 0;
        while (!process.WaitForExit(30))
        {
            process.Refresh();
            most = Math.Max(most, HeldNow(process));
        }

        Directory.Delete(folder, recursive: true);
        Assert.InRange(most, 1, bound);
        Assert.InRange(process.ExitCode, 1, 2);
        Assert.DoesNotContain("   at Chandlery.", await output + await errors, StringComparison.Ordinal);
    }

    // Between two looks it may have ended.
    private static long HeldNow(Process process)
    {
        try
        {
            return process.WorkingSet64;
        }
        catch (InvalidOperationException)
        {
            return 0;
        }
    }

    // A page whose content is blanks, packed.
    private static byte[] UnpacksTo(long bytes)
    {
        using var packed = new MemoryStream();
        using (var packer = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            byte[] blanks = new byte[10_000_000];
            Array.Fill(blanks, (byte)' ');
            for (long done = 0; done < bytes; done += blanks.Length)
            {
                packer.Write(blanks);
            }
        }

        using var pdf = new MemoryStream();
        var places = new List<long>();
        void Text(string text) => pdf.Write(Encoding.Latin1.GetBytes(text));
        void Begin()
        {
            places.Add(pdf.Length);
            Text($"{places.Count} 0 obj\n");
        }

        Text("%PDF-1.4\n");
        Begin();
        Text("<< /Type /Catalog /Pages 2 0 R >>\nendobj\n");
        Begin();
        Text("<< /Type /Pages /Kids [3 0 R] /Count 1 >>\nendobj\n");
        Begin();
        Text("<< /Type /Page /Parent 2 0 R /MediaBox [0 0 300 300] /Contents 4 0 R /Resources << >> >>\nendobj\n");
        Begin();
        Text($"<< /Length {packed.Length} /Filter /FlateDecode >>\nstream\n");
        packed.WriteTo(pdf);
        Text("\nendstream\nendobj\n");
        long table = pdf.Length;
        Text($"xref\n0 5\n0000000000 65535 f \n{string.Concat(places.Select(p => $"{p:D10} 00000 n \n"))}");
        Text($"trailer << /Size 5 /Root 1 0 R >>\nstartxref\n{table}\n%%EOF\n");
        return pdf.ToArray();
    }
}
