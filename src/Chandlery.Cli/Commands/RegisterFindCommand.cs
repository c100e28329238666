using System.CommandLine;
using System.Text.Json;
using Chandlery.Files;
using Chandlery.Register;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery register find</c>: which labels are out there, by pages.</summary>
internal static class RegisterFindCommand
{
    private const int MostInTable = 200;

    public static Command Build()
    {
        var path = RegisterCommand.PathArgument();
        var batch = new Option<string?>("--batch") { Description = "Batch code, or name of the batch's declaration." };
        var substance = new Option<string?>("--substance") { Description = "CAS number, or part of a name." };
        var oil = new Option<string?>("--oil") { Description = "Name of an oil's declaration, or part of its trade name." };
        var document = new Option<string?>("--document") { Description = "Part of the supplier document's reference." };
        var revised = new Option<string?>("--revised") { Description = "Revision date of the supplier's document, such as 2026-02-10." };
        var after = new Option<long>("--after") { Description = "Only entries behind this number: the next page of a long answer." };
        var most = new Option<int?>("--most") { Description = $"How many entries at most. Default: {MostInTable} in a table, else all." };
        most.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int?>() < 1)
            {
                result.AddError("--most: write how many entries at most, such as 200.");
            }
        });
        var format = new Option<string>("--format")
        {
            Description = "table or csv; --json is for programs. Default: table.",
            DefaultValueFactory = _ => "table",
        };
        JsonOption.AcceptOnly(format, "table", "csv");
        Option<bool> json = JsonOption.Of("register find");
        var output = new Option<string?>("--out") { Description = "File to write; - or nothing: the standard output." };
        var command = new Command(
            "find",
            "Which labels are out there: with this oil revision, this substance, this batch. Without options: all entries."
        )
        {
            path,
            batch,
            substance,
            oil,
            document,
            revised,
            after,
            most,
            format,
            json,
            output,
        };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    using RegisterBook register = RegisterPlace.Named(parse.GetValue(path)!).OpenToRead();
                    var query = new RegisterQuery(
                        parse.GetValue(batch),
                        parse.GetValue(substance),
                        parse.GetValue(oil),
                        parse.GetValue(document),
                        parse.GetValue(revised)
                    );
                    int damaged = 0;
                    IEnumerable<RegisterEntry> entries = register.Stream(
                        query,
                        number =>
                        {
                            damaged++;
                            session.Complain($"Entry {number} is damaged and was left out: 'register verify' says more.");
                        },
                        new RegisterStretch(parse.GetValue(after) + 1, false)
                    );
                    string shape = parse.GetValue(json) ? "json" : parse.GetValue(format)!;
                    var page = new RegisterPage(entries, parse.GetValue(most) ?? (shape == "table" ? MostInTable : null));
                    if (parse.GetValue(output) == StandardOutput.Sign)
                    {
                        Write(page, shape, session.Documents.Text);
                    }
                    else if (parse.GetValue(output) is { } target)
                    {
                        AtomicFile.Write(target, writer => Write(page, shape, writer));
                        session.Output.WriteLine(target);
                    }
                    else
                    {
                        Write(page, shape, session.Output);
                    }

                    if (page.Next is { } next)
                    {
                        session.Complain($"There are more: --after {next} shows the next ones.");
                    }

                    if (register.SearchDoubt is { } doubt)
                    {
                        session.Complain(
                            $"Look: {doubt}. Entries were found by what is signed in them, as far as it is there: 'register verify' says more, and 'register rebuild' makes anew what is searched."
                        );
                    }

                    return damaged > 0 || register.SearchDoubt is not null ? ExitCode.StopsSale : ExitCode.Fine;
                }
            )
        );
        return command;
    }

    // An entry at a time: however many there are, none is kept but its line.
    private static void Write(RegisterPage page, string format, TextWriter output)
    {
        switch (format)
        {
            case "json":
                string before = "[";
                foreach (RegisterEntry entry in page.Entries())
                {
                    output.Write(before);
                    output.Write(JsonSerializer.Serialize(entry, RegisterJson.Default.RegisterEntry));
                    before = ",";
                }

                output.Write(before == "[" ? "[]\n" : "]\n");
                break;
            case "csv":
                RegisterTable.Write(page.Entries(), output);
                break;
            default:
                Table(page.Entries(), output);
                break;
        }
    }

    private static void Table(IEnumerable<RegisterEntry> entries, TextWriter output)
    {
        var table = new TextTable("no.", "when (UTC)", "by", "batch", "candle", "law, day", "oils", "documents");
        int count = 0;
        foreach (RegisterEntry e in entries)
        {
            count++;
            table.Add(
                $"{e.Number}",
                e.At,
                e.By,
                e.Content.Batch,
                e.Content.Candle,
                $"{e.Content.Edition}, {e.Content.AsOf}",
                string.Join("; ", e.Content.Oils.Select(o => $"{o.Name} ({o.Document}, {o.Revised})")),
                string.Join(", ", e.Content.Documents.Select(d => d.Name))
            );
        }

        table.Write(output, AssessCommand.Width);
        output.Write($"{count} entr{(count == 1 ? "y" : "ies")}.\n");
    }
}
