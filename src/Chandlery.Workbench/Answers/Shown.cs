using Chandlery.Workbench.Forms;
using Chandlery.Yaml;

namespace Chandlery.Workbench.Answers;

/// <summary>Problems as the page shows them.</summary>
internal static class Shown
{
    /// <summary>A problem of the declaration on the desk, beside its field where it has one.</summary>
    public static DeskProblem Beside(Workroom room, FormDesk form, Problem problem) =>
        problem.Place.File == Path.Combine(room.Root, form.File)
        && FieldPath.At(form.Map, problem.Place.Line, problem.Place.Column) is { } field
            ? new DeskProblem($"{problem.What} {problem.Remedy}".TrimEnd(), field)
            : new DeskProblem(room.Shown(problem), null);
}
