using System.CommandLine;
using System.Diagnostics;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.SafetyFiles.TechnicalFiles;
using Chandlery.Files;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Papers;
using Chandlery.Register;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary>
/// One run: reads law and declarations, assesses, and turns failures into messages and exit codes. What is wrong with one candle
/// does not stop the others: they are worked on, and what was left out is said at the end.
/// </summary>
internal sealed class Session(TextWriter output, TextWriter errors, bool verbose)
{
    // Whose candle an assessment is of, with what its fronts are drawn with: opened once, by the first paper that has one.
    private readonly Dictionary<Assessment, (DeclarationFolder Folder, Lazy<BrandKit> Brand)> homes = new(
        ReferenceEqualityComparer.Instance
    );

    /// <summary>The data files that law and drawings are read from.</summary>
    private IReadOnlyDictionary<string, string> data = new Dictionary<string, string>();

    /// <summary>What is told beside documents.</summary>
    public TextWriter Output => output;

    /// <summary>The same for a text whose lines another program may read: no line is broken.</summary>
    public required TextWriter Raw { get; init; }

    /// <summary>Where it is said which files were written: apart from an answer for programs, which stands alone.</summary>
    public required TextWriter Written { get; init; }

    /// <summary>Where a document goes that goes to the standard output.</summary>
    public required StandardOutput Documents { get; init; }

    /// <summary>How far a long work is.</summary>
    public required Progress Progress { get; init; }

    /// <summary>Law and languages; there once <see cref="Run"/> has started the work.</summary>
    public Lawbook Lawbook { get; private set; } = null!;

    /// <summary>The maker's folder; there once <see cref="Run"/> has started the work. Where several are named, the first.</summary>
    public DeclarationFolder Declarations { get; private set; } = null!;

    /// <summary>The folder that an assessed candle lies in.</summary>
    public DeclarationFolder FolderOf(Assessment a) => homes[a].Folder;

    /// <summary>Whether two assessments are of one declaration: names are each folder's own.</summary>
    public bool AreOfOne(Assessment a, Assessment b) => a.Id == b.Id && HomeOf(a) == HomeOf(b);

    // Several paths may mean the same candle.
    private IReadOnlyList<Assessment> EachOnce(IEnumerable<Assessment> assessments) =>
        [.. assessments.DistinctBy(a => (HomeOf(a), a.Id, a.Edition.Id))];

    /// <summary>What keeps a candle's files apart from those of other editions.</summary>
    /// <param name="a">The candle.</param>
    /// <param name="all">All that files are made of.</param>
    public string PrefixOf(Assessment a, IEnumerable<Assessment> all) => IsOnlyEdition(a, all) ? "" : a.Edition.Id + "-";

    /// <summary>Whether a candle is assessed under one edition alone.</summary>
    /// <param name="a">The candle.</param>
    /// <param name="all">All that are assessed.</param>
    public bool IsOnlyEdition(Assessment a, IEnumerable<Assessment> all) => all.Count(other => AreOfOne(other, a)) == 1;

    /// <summary>Each candle once, with its first assessment.</summary>
    public IEnumerable<Assessment> EachCandle(IEnumerable<Assessment> assessments) => assessments.DistinctBy(a => (HomeOf(a), a.Candle.Id));

    /// <summary>Each candle and batch once, with its first assessment.</summary>
    public IEnumerable<Assessment> EachDeclared(IEnumerable<Assessment> assessments) => assessments.DistinctBy(a => (HomeOf(a), a.Id));

    private string HomeOf(Assessment a) => Path.GetFullPath(FolderOf(a).Root);

    /// <summary>The wax of an assessed candle.</summary>
    public Wax WaxOf(Assessment a) => FolderOf(a).Catalogue.Find<Wax>(a.Candle.Wax, new Problems())!;

    /// <summary>What a paper of an assessed candle is made of.</summary>
    public PaperRequest Request(Assessment a, Language language, PaperShop shop, PaperSettings settings) =>
        new(a, language, WaxOf(a), Lawbook, shop, settings)
        {
            Catalogue = FolderOf(a).Catalogue,
            OpensBrand = homes[a].Brand,
            OpensPicture = PictureFiles.WhenAsked(a.Candle),
            FindsRegisterHead = new Lazy<string?>(() => RegisterHead.LineOf(FolderOf(a).Root)),
            FindsEarlier = new Lazy<EarlierVersion?>(() => new EarlierVersions(Lawbook, FolderOf(a)).Of(a, settings.Since)),
        };

    /// <summary>Templates and drawings of the program's own, with the data of this run.</summary>
    public PaperShop OpenShop(Problems problems) => ShippedShop.Open(data, null, problems);

    /// <summary>The run that a command line asks for.</summary>
    public static Session Of(ParseResult parse)
    {
        TextWriter output = parse.InvocationConfiguration.Output;
        TextWriter errors = parse.InvocationConfiguration.Error;
        TextWriter raw = Console.IsOutputRedirected ? output : new HarmlessWriter(output);
        TextWriter shown = Console.IsOutputRedirected || JsonOption.IsGiven(parse) ? raw : new HarmlessWriter(output, AssessCommand.Width);
        TextWriter told = Told(errors);
        bool isQuiet = parse.GetValue<bool>(Manners.Quiet);
        bool standsAlone = StandardOutput.IsMeant(parse) || JsonOption.IsGiven(parse);
        bool isWatched = !isQuiet && ReferenceEquals(errors, Console.Error) && !Console.IsErrorRedirected;
        var clock = Stopwatch.StartNew();
        return new Session(
            isQuiet ? TextWriter.Null
                : StandardOutput.IsMeant(parse) ? told
                : shown,
            told,
            parse.GetValue<bool>(Manners.Verbose)
        )
        {
            Raw =
                isQuiet ? TextWriter.Null
                : StandardOutput.IsMeant(parse) ? told
                : raw,
            Written =
                isQuiet ? TextWriter.Null
                : standsAlone ? told
                : shown,
            Documents = new StandardOutput(raw, ReferenceEquals(output, Console.Out) && Console.IsOutputRedirected),
            Progress = new Progress(errors, isWatched, () => clock.Elapsed),
        };
    }

    /// <summary>The error stream as people see it.</summary>
    public static TextWriter Told(TextWriter errors) =>
        Console.IsErrorRedirected ? errors : new HarmlessWriter(errors, AssessCommand.ErrorWidth);

    /// <summary>Runs a command's work; turns failures of the file system into messages.</summary>
    public static int Guard(ParseResult parse, Func<Session, int> work)
    {
        var session = Of(parse);
        try
        {
            return work(session);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            session.Complain(error.Message);
            return ExitCode.BadInput;
        }
        finally
        {
            session.Progress.Clear();
            session.Output.Flush();
        }
    }

    /// <summary>Runs a command's work on those assessments that its path and options mean and that can be made.</summary>
    /// <param name="parse">The parsed command line.</param>
    /// <param name="options">Its common options.</param>
    /// <param name="work">Does the work on one assessment at least, each given once; returns the exit code.</param>
    public static int Run(ParseResult parse, CommonOptions options, Func<Session, IReadOnlyList<Assessment>, int> work) =>
        Guard(parse, session => session.RunAsked(parse, options, work));

    /// <summary>Runs a command that prints.</summary>
    /// <param name="parse">The parsed command line.</param>
    /// <param name="options">Its common options.</param>
    /// <param name="paper">Its options on printing.</param>
    /// <param name="work">Does the work; returns the exit code.</param>
    public static int Print(
        ParseResult parse,
        CommonOptions options,
        PaperOptions paper,
        Func<Session, Printer, IReadOnlyList<Assessment>, int> work
    )
    {
        Face.LoadAhead();
        return Run(
            parse,
            options,
            (session, assessments) =>
            {
                var problems = new Problems();
                Printer printer = Printer.Open(parse, paper, session.data, problems);
                return problems.None ? work(session, printer, assessments) : session.Report(problems.Found);
            }
        );
    }

    /// <summary>Writes a document to a file and says so, or to the standard output.</summary>
    /// <param name="file">The file, or <see cref="StandardOutput.Sign"/>.</param>
    /// <param name="content">The document.</param>
    /// <exception cref="IOException">It could not be written, or a terminal cannot show it.</exception>
    public void WriteFile(string file, byte[] content) => WriteFile(file, content, Written);

    /// <summary>Writes a document to a file and says so, or to the standard output.</summary>
    /// <param name="file">The file, or <see cref="StandardOutput.Sign"/>.</param>
    /// <param name="content">The document.</param>
    /// <param name="told">Where it is said.</param>
    /// <exception cref="IOException">It could not be written, or a terminal cannot show it.</exception>
    public void WriteFile(string file, byte[] content, TextWriter told)
    {
        Progress.Clear();
        if (file == StandardOutput.Sign)
        {
            Documents.Write(content);
            return;
        }

        AtomicFile.Write(file, content);
        told.WriteLine(file);
    }

    /// <summary>Writes documents into a folder, or the only one to the standard output.</summary>
    /// <param name="files">The documents.</param>
    /// <param name="into">A folder, or <see cref="StandardOutput.Sign"/>.</param>
    /// <exception cref="IOException">One could not be written, or the standard output takes none of them.</exception>
    public void Write(IEnumerable<PendingFile> files, string into)
    {
        Progress.Clear();
        if (into == StandardOutput.Sign)
        {
            Documents.Write(files);
            return;
        }

        foreach (PendingFile file in FilesApart.Of(files))
        {
            file.Write(into, Written);
        }
    }

    /// <summary>Prints what is wrong with the input when nothing came of the command.</summary>
    public int Report(IReadOnlyList<Problem> problems)
    {
        Complain(problems);
        Complain($"{Counted(problems.Count)}; nothing was written.");
        return ExitCode.BadInput;
    }

    /// <summary>Prints what was left out when the rest was done.</summary>
    /// <param name="report">What is wrong.</param>
    /// <param name="code">The exit code of what was done.</param>
    /// <returns>The exit code of all.</returns>
    public int Close(FolderReport report, int code)
    {
        Complain(report.Bad);
        foreach (string note in report.Notes)
        {
            Complain(note);
        }

        if (report.Bad.Count == 0)
        {
            return code;
        }

        Complain($"{Counted(report.Bad.Count)}; what depends on them was left out.");
        return ExitCode.BadInput;
    }

    /// <summary>Whether there is the place that a command line names, if it names one; says so once for all candles where not.</summary>
    public bool Knows(Lawbook lawbook, string? place)
    {
        if (place is null || lawbook.FindPlace(place) is not null)
        {
            return true;
        }

        Complain($"--place: There is no edition of the law for the place '{place}'. {lawbook.InsteadOfPlace(place)}");
        return false;
    }

    /// <summary>Writes a paragraph, broken at the width of tables; later lines are set in like the first.</summary>
    public void WriteWrapped(string text)
    {
        string inset = text[..(text.Length - text.TrimStart().Length)];
        foreach (string line in TextTable.Wrap(TextTable.Harmless(text.TrimStart()), AssessCommand.Width - inset.Length))
        {
            output.WriteLine(inset + line);
        }
    }

    /// <summary>Prints a message on the error stream.</summary>
    public void Complain(string message)
    {
        Progress.Clear();
        errors.WriteLine(Ink.Errors.Mind(TextTable.Harmless(message)));
    }

    /// <summary>Says on the error stream what the work was done with, to whoever asked for more.</summary>
    public void Remark(string message)
    {
        if (verbose)
        {
            errors.WriteLine(TextTable.Harmless(message));
        }
    }

    private void Complain(IReadOnlyList<Problem> problems)
    {
        foreach (Problem problem in problems)
        {
            Complain(problem.ToString());
        }
    }

    private static string Counted(int problems) => $"{problems} problem{(problems == 1 ? "" : "s")}";

    private DeclarationFolder? Opened(string path, Problems problems) =>
        path != StandardInput.Sign ? DeclarationFolder.Open(path, Lawbook.Vocabulary)
        : StandardInput.ReadOr(path, problems) is { } text
            ? DeclarationFolder.OpenTyped(text, StandardInput.NameOf(path), Lawbook.Vocabulary)
        : null;

    private int RunAsked(ParseResult parse, CommonOptions options, Func<Session, IReadOnlyList<Assessment>, int> work)
    {
        var problems = new Problems();
        data = ShippedFiles.Data(parse.GetValue(options.Data), problems);
        Lawbook? lawbook = ShippedLaw.Open(data, parse.GetValue(options.Data), problems);
        if (lawbook is null || !problems.None)
        {
            return Report(problems.Found);
        }

        Lawbook = lawbook;
        if (!Knows(lawbook, parse.GetValue(options.Place)))
        {
            return ExitCode.BadInput;
        }

        IReadOnlyList<string> paths = options.PathsIn(parse);
        List<DeclarationFolder> folders = [.. paths.Select(path => Opened(path, problems)).OfType<DeclarationFolder>()];
        if (folders.Count == 0)
        {
            return Report(problems.Found);
        }

        Declarations = folders[0];
        List<Assessment> assessments = [];
        foreach (DeclarationFolder folder in folders)
        {
            Remark(
                $"{folder.Root}: {folder.Catalogue.All.Count} declarations, {folder.Asked.Count} asked for; law of {IsoDay.Plain(parse.GetValue(options.AsOf))}."
            );
            assessments.AddRange(Assess(folder, parse.GetValue(options.AsOf), parse.GetValue(options.Place), problems));
        }

        Progress.Clear();
        Remark($"{assessments.Count} assessed: {string.Join(", ", assessments.Select(a => $"{a.Id} under {a.Edition.Id}"))}.");
        FolderReport report = FolderReport.Of(folders, problems.Found);
        return assessments.Count > 0 ? Close(report, work(this, EachOnce(assessments)))
            : report.Bad.Count > 0 ? Report(report.Bad)
            : Report([DeclarationFolder.NoCandle(paths[0])]);
    }

    private IEnumerable<Assessment> Assess(DeclarationFolder folder, DateOnly asOf, string? place, Problems problems)
    {
        var assessor = new Assessor(Lawbook, folder.Catalogue, asOf);
        Lazy<BrandKit> brand = BrandFiles.WhenAsked(folder.Catalogue);
        for (int i = 0; i < folder.Asked.Count; i++)
        {
            foreach (Assessment a in assessor.Assess(folder.Asked[i], place, problems))
            {
                homes[a] = (folder, brand);
                yield return a;
            }

            Progress.Tell(i + 1, folder.Asked.Count);
        }
    }
}
