namespace Emberwright.Stove.Patterns;

/// <summary>Collects what is wrong with a file's JSON, each with its path.</summary>
internal sealed class JsonProblems
{
    private readonly List<FileProblem> found = [];

    public IReadOnlyList<FileProblem> Found => found;

    public void Report(string path, string message, string remedy) => found.Add(new FileProblem(path, message, remedy));
}
