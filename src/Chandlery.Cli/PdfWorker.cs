using System.Diagnostics;
using Chandlery.Files;
using Chandlery.Intake.Pages;
using Chandlery.Yaml;

namespace Chandlery.Cli;

/// <summary>
/// Reads PDFs from strangers in a process of its own, whose time and memory are bounded: a file that makes the reader
/// loop, eat memory or crash ends that process, not this one.
/// </summary>
internal static class PdfWorker
{
    /// <summary>The argument by which the program starts itself as the worker.</summary>
    public const string Argument = "read-pdf-for-parent";

    /// <summary>The argument by which it starts itself to read pages that are pictures as well.</summary>
    public const string WithPictures = "read-pictures-for-parent";

    private const int LongestMilliseconds = 40_000;
    private const int LongestWithPicturesMilliseconds = 300_000;
    private const string HeapLimitBytesInHex = "30000000";

    // The page may be given many files at once; their readers wait for each other, so that together they stay within bounds too.
    private static readonly SemaphoreSlim AtOnce = new(2);

    /// <summary>The pages; refused with the reason in plain words.</summary>
    public static Parsed<IReadOnlyList<SheetPage>> Parse(byte[] pdf)
    {
        Parsed<IReadOnlyList<SheetPage>> pages = Parse(pdf, Argument, LongestMilliseconds);
        bool hasPictures = pages.Success ? pages.Value.Any(p => p.IsUnread) : pages.Reason == PdfWords.Scanned;
        return hasPictures && Tesseract.IsInstalled ? Parse(pdf, WithPictures, LongestWithPicturesMilliseconds) : pages;
    }

    private static Parsed<IReadOnlyList<SheetPage>> Parse(byte[] pdf, string how, int longestMilliseconds)
    {
        AtOnce.Wait();
        try
        {
            return Ask(pdf, how, longestMilliseconds);
        }
        finally
        {
            AtOnce.Release();
        }
    }

    private static Parsed<IReadOnlyList<SheetPage>> Ask(byte[] pdf, string how, int longestMilliseconds)
    {
        using Process worker = Process.Start(Command(how)) ?? throw new IOException("The PDF reader could not be started.");
        var output = new MemoryStream();
        Task reading = worker.StandardOutput.BaseStream.CopyToAsync(output);
        Task<string> errors = worker.StandardError.ReadToEndAsync();
        try
        {
            using Stream input = worker.StandardInput.BaseStream;
            input.Write(pdf);
        }
        catch (IOException)
        {
            // The worker died while it was being fed; its output tells nothing, which is handled below.
        }

        if (!worker.WaitForExit(longestMilliseconds))
        {
            worker.Kill(entireProcessTree: true);
            return Parsed.Not<IReadOnlyList<SheetPage>>(
                $"Reading the PDF took longer than {longestMilliseconds / 1000} s, so it was stopped. Ask the supplier for a fresh copy."
            );
        }

        Task.WaitAll(reading, errors);
        if (worker.ExitCode != 0 || output.Length == 0)
        {
            return Parsed.Not<IReadOnlyList<SheetPage>>(
                "The PDF could not be read within the memory allowed, or it made the reader fail. Ask the supplier for a fresh copy."
            );
        }

        output.Position = 0;
        return PageWire.Read(output);
    }

    /// <summary>The worker's side: bytes come in, pages go out.</summary>
    public static int Work(string how, Stream input, Stream output)
    {
        var pdf = new MemoryStream();
        input.CopyTo(pdf);
        PageWire.Write(output, PdfWords.Parse(pdf.ToArray(), how == WithPictures ? Tesseract.Read : null));
        return 0;
    }

    private static ProcessStartInfo Command(string how)
    {
        string assembly = Path.Combine(AppContext.BaseDirectory, "chandlery.dll");
        bool byHost = File.Exists(assembly) && Path.GetFileNameWithoutExtension(Environment.ProcessPath) != "chandlery";
        var start = new ProcessStartInfo(Environment.ProcessPath!)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        if (byHost)
        {
            start.FileName = "dotnet";
            start.ArgumentList.Add(assembly);
        }

        start.ArgumentList.Add(how);
        start.Environment["DOTNET_GCHeapHardLimit"] = HeapLimitBytesInHex;
        start.Environment["DOTNET_gcServer"] = "0";
        start.Environment["DOTNET_DbgEnableMiniDump"] = "0";
        return start;
    }
}
