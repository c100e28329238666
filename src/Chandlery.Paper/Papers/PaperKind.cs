using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers;

/// <summary>A kind of paper: what commands, page and reference must know of it, and how it is made.</summary>
public abstract class PaperKind
{
    /// <summary>Sets up a kind.</summary>
    /// <param name="id">Short name, with which its file names end.</param>
    /// <param name="title">What people call it, as a heading.</param>
    protected PaperKind(string id, string title)
    {
        Id = id;
        Title = title;
    }

    /// <summary>Short name, with which its file names end.</summary>
    public string Id { get; }

    /// <summary>What people call it, as a heading.</summary>
    public string Title { get; }

    /// <summary>What people call it, inside a sentence.</summary>
    public string Called => char.ToLowerInvariant(Title[0]) + Title[1..];

    /// <summary>Whether it is made only where nothing stops the sale.</summary>
    public virtual bool NeedsSale => false;

    /// <summary>Whether there is one for each language of the label; otherwise one holds all that are needed.</summary>
    public virtual bool IsPerLanguage => false;

    /// <summary>Whether one serves the candle under every edition of the law.</summary>
    public virtual bool IsPerCandle => false;

    /// <summary>Whether it says what is needed for a number of candles.</summary>
    public virtual bool TakesCount => false;

    /// <summary>Whether it stands in a dossier.</summary>
    public virtual bool IsInDossier => true;

    /// <summary>Whether a dossier holds its pages as pictures too, where pictures are asked for.</summary>
    public virtual bool HasPicturesInDossier => true;

    /// <summary>Whether the page enters it in the register with the sale of a batch.</summary>
    public virtual bool IsRegistered => false;

    /// <summary>The languages that it is made in one by one; the first of the label where one paper holds them all.</summary>
    public IReadOnlyList<Language> LanguagesOf(Assessment a) => IsPerLanguage ? a.Languages : [a.Languages[0]];

    /// <summary>Whether it is the maker's, one for all products under a law: its file bears the law's name and no product's.</summary>
    public virtual bool IsOfMaker => false;

    /// <summary>Name of its file, without format.</summary>
    public string FileName(Assessment a, Language language)
    {
        string of = IsOfMaker ? a.Edition.Id : a.Id;
        return IsPerLanguage && a.Languages.Count > 1 ? $"{of}-{language.Code}-{EndingFor(a)}" : $"{of}-{EndingFor(a)}";
    }

    /// <summary>Name of its file as it is made with settings, without format.</summary>
    public string FileName(Assessment a, Language language, PaperSettings settings) => FileName(a, language) + Numbered(settings);

    /// <summary>Declarations that it shows beside those that the assessment rests on: an archive keeps them too.</summary>
    public virtual IEnumerable<IDeclaration> AlsoShown(Assessment a, Catalogue catalogue) => [];

    /// <summary>What keeps versions of it apart by name; empty for a paper without versions.</summary>
    protected virtual string Numbered(PaperSettings settings) => "";

    /// <summary>With what the names of its files end.</summary>
    protected virtual string EndingFor(Assessment a) => Id;

    /// <summary>Whether the product's kind has it.</summary>
    public bool IsFor(Assessment a) => !a.Kind.WithoutPapers.Contains(Id);

    /// <summary>What it is called where it could be mistaken for its like in another language.</summary>
    public string CalledIn(Assessment a, Language language) =>
        IsPerLanguage && a.Languages.Count > 1 ? $"{Called} in {language.Name}" : Called;

    /// <summary>The paper, or why there is none.</summary>
    public PaperOutcome Make(PaperRequest request)
    {
        if (!IsFor(request.Assessment))
        {
            return new MissingPaper($"none is made of a {request.Assessment.Kind.Name} so far.", IsDue: false, []);
        }

        if (request.Assessment.RefusalOf(Id) is { } refusal)
        {
            return new MissingPaper($"{request.Assessment.Kind.Say(refusal.Because)} ({refusal.Clause})", IsDue: refusal.StopsSale, []);
        }

        if (NeedsSale && request.Assessment.StopsSale)
        {
            return new MissingPaper("something stops the sale; the assessment says what.", IsDue: true, []);
        }

        var problems = new Problems();
        PaperOutcome outcome = Make(request, problems);
        return outcome is not MadePaper made || IsPerCandle || !request.Assessment.Edition.IsKnownInPart ? outcome
            : SaysWhatIsLeftOut ? new MadePaper(Lined(made.Document, request), [.. made.Warnings, .. LeftOut(request)])
            : made with { Warnings = [.. made.Warnings, .. LeftOut(request)] };
    }

    /// <summary>Whether it says itself, at the foot of each page, that the law of its place is known in part.</summary>
    protected virtual bool SaysWhatIsLeftOut => true;

    /// <summary>The language that a page speaks; English where one paper holds all languages and is not for buyers.</summary>
    /// <param name="request">What it is made of.</param>
    /// <param name="page">Its number, from 0.</param>
    protected virtual Language LanguageOf(PaperRequest request, int page) =>
        IsPerLanguage ? request.Language : request.Lawbook.FindLanguage("en")!;

    private PaperDocument Lined(PaperDocument document, PaperRequest request) =>
        LeftOutLine.On(document, request.Assessment.Places.Select(p => p.Code.Text), page => LanguageOf(request, page));

    // Where a law is known in part only, no paper goes out without a word of what was not looked at.
    private static IEnumerable<string> LeftOut(PaperRequest request) =>
        request.Assessment.Edition.DoesNotCover.Select(left => $"not looked at: {request.Assessment.Kind.Say(left)}.");

    /// <summary>Makes the paper of a candle that it is allowed for.</summary>
    /// <param name="request">What to make it of.</param>
    /// <param name="problems">Collects what is wrong with template or data.</param>
    protected abstract PaperOutcome Make(PaperRequest request, Problems problems);

    /// <summary>The outcome of a document that is null only where there are problems.</summary>
    protected static PaperOutcome Outcome(PaperDocument? document, Problems problems, IReadOnlyList<string>? warnings = null) =>
        document is null ? MissingPaper.Because(problems, isDue: true) : new MadePaper(document, warnings ?? []);
}
