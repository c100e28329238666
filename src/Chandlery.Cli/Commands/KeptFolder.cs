using System.CommandLine;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.SafetyFiles;
using Chandlery.Core.SafetyFiles.Records;
using Chandlery.Files;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Records;
using Chandlery.Register;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary>Commands on what a maker keeps of a whole folder: they share how it is opened, checked and printed.</summary>
internal sealed class KeptFolder
{
    private DeclaredKinds? kinds;

    private KeptFolder(Session session, Folder folder, DateOnly asOf)
    {
        Session = session;
        Lawbook = folder.Lawbook;
        Data = folder.Data;
        Root = folder.Declarations.Root;
        Catalogue = folder.Declarations.Catalogue;
        AsOf = asOf;
        Problems.AddRange(folder.Declarations.Problems.Found);
        KeptReferences.Check(Catalogue, Lawbook.Safety.File.Value.Risks, Problems);
    }

    public Session Session { get; }

    public Lawbook Lawbook { get; }

    /// <summary>What kinds of product its candles are of.</summary>
    public DeclaredKinds Kinds => kinds ??= new DeclaredKinds(Lawbook.Kinds);

    public IReadOnlyDictionary<string, string> Data { get; }

    public string Root { get; }

    public Catalogue Catalogue { get; }

    public DateOnly AsOf { get; }

    /// <summary>What is wrong; told when the command is done.</summary>
    public Problems Problems { get; } = new();

    /// <summary>The maker's name; empty where none is declared.</summary>
    public string MakerName => Catalogue.OfKind<Maker>().FirstOrDefault()?.Name ?? "";

    /// <summary>A command on a folder.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="about">What it does.</param>
    /// <param name="run">Does it; returns the exit code.</param>
    /// <param name="more">Its own options.</param>
    public static Command Build(string name, string about, Func<KeptFolder, ParseResult, int> run, params Option[] more)
    {
        var options = new CommonOptions();
        var path = new Argument<string>("folder") { Description = "The maker's folder." };
        var command = new Command(name, about) { path };
        foreach (Option option in more)
        {
            command.Add(option);
        }

        command.Add(options.AsOf);
        command.Add(options.Data);
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    var opening = new Problems();
                    if (Folder.Open(parse.GetValue(path)!, parse.GetValue(options.Data), opening) is not { } folder)
                    {
                        return session.Report(opening.Found);
                    }

                    var kept = new KeptFolder(session, folder, parse.GetValue(options.AsOf));
                    return session.Close(new FolderReport(kept.Problems.Found, []), run(kept, parse));
                }
            )
        );
        return command;
    }

    /// <summary>A declaration that an option names; null when there is none, which is told when the command is done.</summary>
    public T? Find<T>(string id, string option)
        where T : class, IDeclaration => Catalogue.Find<T>(new Reference(id, new TextPlace(option, 0, 0)), Problems);

    /// <summary>The option for a document.</summary>
    public static Option<string?> Out() =>
        new("--out") { Description = "Folder to write the document into as a PDF; - sends it to the standard output." };

    /// <summary>Prints a table or JSON, as the command line says; where there is nothing to tell of, how to begin.</summary>
    /// <param name="json">Whether JSON is asked for.</param>
    /// <param name="asJson">The JSON.</param>
    /// <param name="table">The table.</param>
    /// <param name="declares">What each row is declared as; null for rows that are of several declarations.</param>
    public void Print(bool json, string asJson, TextTable table, string? declares = null)
    {
        if (table.IsEmpty && declares is not null)
        {
            Session.Complain($"No {declares} is declared in this folder: write a .yaml file with 'declares: {declares}'.");
        }

        if (json)
        {
            Session.Output.WriteLine(asJson);
        }
        else if (!table.IsEmpty || declares is null)
        {
            table.Write(Session.Output, AssessCommand.Width);
        }
    }

    /// <summary>Writes a document as a PDF when a folder is named.</summary>
    public void Write(KeptRecord kept, string name, string? into)
    {
        if (into is null)
        {
            return;
        }

        PaperShop shop = ShippedShop.Open(Data, null, Problems);
        if (RecordDocument.Make(RegisterHead.On(kept, Root), shop, Problems) is { } document)
        {
            Session.Write([new PendingFile(name + ".pdf", Paper.Drawing.PdfDrawing.Draw(document))], into);
        }
    }
}
