using System.CommandLine;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Files;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Papers;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary>
/// One run: reads law and declarations, assesses, and turns failures into messages and exit codes. What is wrong with one candle
/// does not stop the others: they are worked on, and what was left out is said at the end.
/// </summary>
internal sealed class Session(TextWriter output, TextWriter errors, bool verbose)
{
    /// <summary>The data files that law and drawings are read from.</summary>
    private IReadOnlyDictionary<string, string> data = new Dictionary<string, string>();

    // What fronts are drawn with: opened once, by the first paper that has one.
    private Lazy<BrandKit> brand = new(BrandKit.None);

    public TextWriter Output => output;

    /// <summary>Law and languages; there once <see cref="Run"/> has started the work.</summary>
    public Lawbook Lawbook { get; private set; } = null!;

    /// <summary>The maker's folder; there once <see cref="Run"/> has started the work.</summary>
    public DeclarationFolder Declarations { get; private set; } = null!;

    /// <summary>The wax of an assessed candle.</summary>
    public Wax WaxOf(Assessment assessment) => Declarations.Catalogue.Find<Wax>(assessment.Candle.Wax, new Problems())!;

    /// <summary>What a paper of an assessed candle is made of.</summary>
    public PaperRequest Request(Assessment a, Language language, PaperShop shop, PaperSettings settings) =>
        new(a, language, WaxOf(a), Lawbook, shop, settings) { Catalogue = Declarations.Catalogue, OpensBrand = brand };

    /// <summary>Templates and drawings of the program's own, with the data of this run.</summary>
    public PaperShop OpenShop(Problems problems) => ShippedShop.Open(data, null, problems);

    /// <summary>Runs a command's work; turns failures of the file system into messages.</summary>
    public static int Guard(ParseResult parse, Func<Session, int> work)
    {
        TextWriter output = parse.InvocationConfiguration.Output;
        var session = new Session(
            parse.GetValue<bool>(Manners.Quiet) ? TextWriter.Null
                : Console.IsOutputRedirected ? output
                : new HarmlessWriter(output),
            parse.InvocationConfiguration.Error,
            parse.GetValue<bool>(Manners.Verbose)
        );
        try
        {
            return work(session);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            session.Complain(error.Message);
            return ExitCode.BadInput;
        }
    }

    /// <summary>Runs a command's work on those assessments that its path and options mean and that can be made.</summary>
    /// <param name="parse">The parsed command line.</param>
    /// <param name="options">Its common options.</param>
    /// <param name="work">Does the work on one assessment at least; returns the exit code.</param>
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
                session.brand = BrandFiles.WhenAsked(session.Declarations.Catalogue);
                return problems.None ? work(session, printer, assessments) : session.Report(problems.Found);
            }
        );
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
    public void Complain(string message) => errors.WriteLine(Ink.Errors.Mind(TextTable.Harmless(message)));

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
        if (Opened(parse.GetValue(options.Path)!, problems) is not { } declarations)
        {
            return Report(problems.Found);
        }

        Declarations = declarations;
        Remark(
            $"{Declarations.Root}: {Declarations.Catalogue.All.Count} declarations, {Declarations.Asked.Count} asked for; law of {IsoDay.Plain(parse.GetValue(options.AsOf))}."
        );
        var assessor = new Assessor(lawbook, Declarations.Catalogue, parse.GetValue(options.AsOf));
        List<Assessment> assessments = [.. Declarations.Asked.SelectMany(d => assessor.Assess(d, parse.GetValue(options.Place), problems))];
        Remark($"{assessments.Count} assessed: {string.Join(", ", assessments.Select(a => $"{a.Id} under {a.Edition.Id}"))}.");
        FolderReport report = FolderReport.Of(Declarations, problems.Found);
        return assessments.Count > 0 ? Close(report, work(this, assessments))
            : report.Bad.Count > 0 ? Report(report.Bad)
            : Report([DeclarationFolder.NoCandle(parse.GetValue(options.Path)!)]);
    }
}
