using System.CommandLine;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Files;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Papers;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary>One run: reads law and declarations, assesses, and turns failures into messages and exit codes.</summary>
internal sealed class Session(TextWriter output, TextWriter errors)
{
    private Catalogue? catalogue;

    /// <summary>The data files that law and drawings are read from.</summary>
    private IReadOnlyDictionary<string, string> data = new Dictionary<string, string>();

    public TextWriter Output => output;

    /// <summary>Law and languages; there once <see cref="Run"/> has started the work.</summary>
    public Lawbook Lawbook { get; private set; } = null!;

    /// <summary>The wax of an assessed candle.</summary>
    public Wax WaxOf(Assessment assessment) => catalogue!.Find<Wax>(assessment.Candle.Wax, new Problems())!;

    /// <summary>What a paper of an assessed candle is made of.</summary>
    public PaperRequest Request(Assessment a, Language language, PaperShop shop, PaperSettings settings) =>
        new(a, language, WaxOf(a), Lawbook, shop, settings);

    /// <summary>Runs a command's work; turns failures of the file system into messages.</summary>
    public static int Guard(ParseResult parse, Func<Session, int> work)
    {
        var session = new Session(parse.InvocationConfiguration.Output, parse.InvocationConfiguration.Error);
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

    /// <summary>Runs a command's work on the assessments that its path and options mean.</summary>
    /// <param name="parse">The parsed command line.</param>
    /// <param name="options">Its common options.</param>
    /// <param name="work">Does the work; returns the exit code.</param>
    public static int Run(ParseResult parse, CommonOptions options, Func<Session, IReadOnlyList<Assessment>, int> work) =>
        Guard(
            parse,
            session =>
            {
                var problems = new Problems();
                IReadOnlyList<Assessment> assessments = session.Assess(parse, options, problems);
                return problems.None ? work(session, assessments) : session.Report(problems);
            }
        );

    /// <summary>Runs a command that prints.</summary>
    /// <param name="parse">The parsed command line.</param>
    /// <param name="options">Its common options.</param>
    /// <param name="paper">Its options on printing.</param>
    /// <param name="work">Does the work; returns the exit code. Nothing may be written once it has found problems.</param>
    public static int Print(
        ParseResult parse,
        CommonOptions options,
        PaperOptions paper,
        Func<Session, Printer, IReadOnlyList<Assessment>, Problems, int> work
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
                return problems.None ? work(session, printer, assessments, problems) : session.Report(problems);
            }
        );
    }

    /// <summary>Prints what is wrong with the input.</summary>
    public int Report(Problems problems)
    {
        foreach (Problem problem in problems.Found)
        {
            errors.WriteLine(problem);
        }

        errors.WriteLine($"{problems.Found.Count} problem{(problems.Found.Count == 1 ? "" : "s")}; nothing was written.");
        return ExitCode.BadInput;
    }

    /// <summary>Prints a message on the error stream.</summary>
    public void Complain(string message) => errors.WriteLine(message);

    private IReadOnlyList<Assessment> Assess(ParseResult parse, CommonOptions options, Problems problems)
    {
        data = ShippedFiles.Data(parse.GetValue(options.Data), problems);
        Lawbook? lawbook = ShippedLaw.Open(data, parse.GetValue(options.Data), problems);
        if (lawbook is null)
        {
            return [];
        }

        Lawbook = lawbook;
        DeclarationFolder folder = DeclarationFolder.Open(parse.GetValue(options.Path)!, lawbook.Vocabulary);
        if (!folder.Problems.None)
        {
            problems.AddRange(folder.Problems.Found);
            return [];
        }

        catalogue = folder.Catalogue;
        var assessor = new Assessor(lawbook, folder.Catalogue, parse.GetValue(options.AsOf));
        return [.. folder.Asked.SelectMany(d => assessor.Assess(d, parse.GetValue(options.Place), problems))];
    }
}
