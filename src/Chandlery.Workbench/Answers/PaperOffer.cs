namespace Chandlery.Workbench.Answers;

/// <summary>A paper that the page can ask for.</summary>
/// <param name="Id">Short name to ask for it.</param>
/// <param name="Title">What people call it.</param>
/// <param name="TakesCount">Whether it says what is needed for a number of candles.</param>
/// <param name="Languages">Languages to choose among, by edition of the law; none where one paper holds them all.</param>
internal sealed record PaperOffer(
    string Id,
    string Title,
    bool TakesCount,
    IReadOnlyDictionary<string, IReadOnlyList<PaperLanguage>> Languages
);
