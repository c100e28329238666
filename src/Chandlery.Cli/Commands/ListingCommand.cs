using System.CommandLine;
using System.Text;
using System.Text.Json;
using Chandlery.Core.Assessed;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles;
using Chandlery.Core.SafetyFiles.Listings;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery listing</c>: texts for a web shop and for advertisements.</summary>
internal static class ListingCommand
{
    public static Command Build()
    {
        var options = new CommonOptions(severalPaths: true);
        var language = new Option<string?>("--language")
        {
            Description = "One of the label's languages, such as de. Default: all of them.",
        };
        var use = new Option<string>("--for")
        {
            Description = "shop (an offer that can be bought from) or advert. Default: shop.",
            DefaultValueFactory = _ => "shop",
        };
        use.AcceptOnlyFromAmong("shop", "advert");
        var format = new Option<string>("--format")
        {
            Description = "text, html (with the vocabulary of schema.org), csv or json (as --json). Default: text.",
            DefaultValueFactory = _ => "text",
        };
        format.AcceptOnlyFromAmong("text", "html", "csv", "json");
        Option<bool> json = JsonOption.Of("listing");
        var output = new Option<string?>("--out") { Description = "File to write; - or nothing: the standard output." };
        var command = new Command(
            "listing",
            "Write what a web shop or an advertisement must say of a candle, each part with its clause; refused where something stops the sale."
        );
        options.AddTo(command);
        command.Add(language);
        command.Add(use);
        command.Add(format);
        command.Add(json);
        command.Add(output);
        command.SetAction(parse =>
            Session.Run(
                parse,
                options,
                (session, assessments) =>
                {
                    var run = new ListingRun(
                        session,
                        Enum.Parse<ListingUse>(parse.GetValue(use)!, ignoreCase: true),
                        parse.GetValue(language)
                    );
                    List<ShopListing> listings = [.. assessments.SelectMany(run.Listings)];
                    var problems = new Problems();
                    foreach (Assessment a in session.EachCandle(assessments))
                    {
                        PictureFiles.Open(a.Candle, problems);
                    }

                    string text = Written(listings, parse.GetValue(json) ? "json" : parse.GetValue(format)!);
                    if (parse.GetValue(output) is { } file)
                    {
                        session.WriteFile(file, Encoding.UTF8.GetBytes(text));
                    }
                    else
                    {
                        session.Raw.Write(text);
                    }

                    return session.Close(new FolderReport(problems.Found, []), run.Refused ? ExitCode.StopsSale : ExitCode.Fine);
                }
            )
        );
        return command;
    }

    private static string Json(List<ShopListing> listings) =>
        JsonSerializer.Serialize([.. listings.Select(ListingWriter.Report)], SafetyFileJson.Plain.ListingReportArray) + "\n";

    private static string Written(List<ShopListing> listings, string format) =>
        format switch
        {
            "html" => string.Join('\n', listings.Select(ListingWriter.Html)),
            "json" => Json(listings),
            "csv" => Csv.Write(ListingWriter.Columns, listings.Select(ListingWriter.Row)),
            _ => string.Join('\n', listings.Select(ListingWriter.Text)),
        };
}
