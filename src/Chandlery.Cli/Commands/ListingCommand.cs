using System.CommandLine;
using System.Text;
using System.Text.Json;
using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
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
        var options = new CommonOptions();
        var paths = new Argument<string[]>("paths")
        {
            Description = "Candles' or batches' .yaml files, or folders of declarations.",
            Arity = ArgumentArity.OneOrMore,
        };
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
        )
        {
            paths,
            language,
            use,
            format,
            json,
            output,
            options.Place,
            options.AsOf,
            options.Data,
        };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    var problems = new Problems();
                    if (ShippedLaw.Open(parse.GetValue(options.Data), problems) is not { } law)
                    {
                        return session.Report(problems.Found);
                    }

                    List<Assessment> candles = Assess(
                        parse.GetValue(paths)!,
                        law,
                        parse.GetValue(options.AsOf),
                        parse.GetValue(options.Place),
                        problems
                    );
                    var run = new ListingRun(
                        session,
                        law,
                        Enum.Parse<ListingUse>(parse.GetValue(use)!, ignoreCase: true),
                        parse.GetValue(language)
                    );
                    List<ShopListing> listings = [.. candles.SelectMany(run.Listings)];
                    foreach (Assessment a in candles.DistinctBy(c => c.Candle.Id))
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

    private static List<Assessment> Assess(string[] paths, Lawbook law, DateOnly asOf, string? place, Problems problems)
    {
        var candles = new List<Assessment>();
        foreach (string path in paths)
        {
            DeclarationFolder folder = DeclarationFolder.Open(path, law.Vocabulary);
            var own = new Problems();
            var assessor = new Assessor(law, folder.Catalogue, asOf);
            candles.AddRange(folder.Asked.SelectMany(d => assessor.Assess(d, place, own)));
            problems.AddRange(FolderReport.Of(folder, own.Found).Bad);
        }

        return candles;
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
