using System.CommandLine;
using System.Text.Json;
using Chandlery.Cli.Answers;
using Chandlery.Core.Assessed;
using Chandlery.Files;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery designs</c>: the designs of fronts, drawn with the maker's own candle.</summary>
internal static class DesignsCommand
{
    public static Command Build()
    {
        var options = new CommonOptions(severalPaths: true);
        var paper = new PaperOptions();
        var command = new Command(
            "designs",
            "Draw every design of fronts with your own candle: front and law on one label, front and back, wrap, lid, base, tag, strip, sampler."
        );
        var only = new Option<string?>("--design") { Description = "Draw this design alone; without it, all of them." };
        var pieces = new Option<string[]>("--piece")
        {
            Description = $"Draw these pieces alone: {string.Join(", ", DesignPieces.Words)}.",
            AllowMultipleArgumentsPerToken = true,
        };
        pieces.AcceptOnlyFromAmong([.. DesignPieces.Words]);
        var list = new Option<bool>("--list") { Description = "List the designs and draw nothing." };
        command.Add(only);
        command.Add(pieces);
        Option<bool> json = JsonOption.Of("designs");
        json.Description = "With --list: " + char.ToLowerInvariant(json.Description![0]) + json.Description[1..];
        command.Add(list);
        command.Add(json);
        options.AddTo(command);
        paper.AddTo(command);
        command.SetAction(parse =>
            Session.Print(
                parse,
                options,
                paper,
                (session, printer, assessments) =>
                {
                    DesignShelf shelf = printer.Shop.Designs;
                    if (parse.GetValue(list) && parse.GetValue(json))
                    {
                        DesignAnswer[] designs = [.. shelf.Names.Select(n => new DesignAnswer(n, shelf.About(n)))];
                        session.Output.WriteLine(JsonSerializer.Serialize(designs, AnswerJson.Plain.DesignAnswerArray));
                        return ExitCode.Fine;
                    }

                    if (parse.GetValue(list))
                    {
                        foreach (string name in shelf.Names)
                        {
                            session.Output.WriteLine($"{name, -12} {shelf.About(name)}");
                        }

                        return ExitCode.Fine;
                    }

                    string? asked = parse.GetValue(only);
                    if (asked is not null && !shelf.Names.Contains(asked))
                    {
                        session.Complain($"There is no design '{asked}'. {shelf.Remedy(asked)}");
                        return ExitCode.BadInput;
                    }

                    string[] wanted = parse.GetValue(pieces) is { Length: > 0 } some ? some : [.. DesignPieces.Words];
                    return Draw(session, printer, assessments, asked is null ? shelf.Names : [asked], wanted);
                }
            )
        );
        return command;
    }

    private static int Draw(
        Session session,
        Printer printer,
        IReadOnlyList<Assessment> assessments,
        IReadOnlyList<string> designs,
        IReadOnlyList<string> pieces
    )
    {
        var problems = new Problems();
        var files = new List<PendingFile>();
        bool lacks = false;
        foreach (Assessment a in assessments)
        {
            PaperRequest request = session.Request(a, a.Languages[0], printer.Shop, new PaperSettings());
            problems.AddRange(request.Brand.Problems);
            foreach (string design in designs)
            {
                foreach (string piece in pieces)
                {
                    if (DesignPieces.Draw(request, design, piece, problems) is { } document)
                    {
                        string name = $"{session.PrefixOf(a, assessments)}{a.Id}-{design}-{piece}";
                        files.AddRange(printer.Draw(name, document, () => printer.Pdf(document, session, [a])));
                    }
                    else if (problems.None)
                    {
                        lacks = true;
                        session.Complain($"{a.Id}: no {piece} of {design}: {DesignPieces.WhyNot(request, piece)}");
                    }
                }
            }
        }

        if (!problems.None)
        {
            return session.Report([.. problems.Found.Distinct()]);
        }

        printer.Write(files, session);
        return lacks ? ExitCode.StopsSale : ExitCode.Fine;
    }
}
