namespace TrimOut.Warm;

/// <summary>A command line that is to be carried out.</summary>
/// <param name="Folder">The folder that it is run in.</param>
/// <param name="Data">Where the program keeps what is its own.</param>
/// <param name="Arguments">The words after the program's name.</param>
/// <param name="Input">What stands on standard input.</param>
public sealed record Asked(string Folder, string Data, string[] Arguments, string Input);

/// <summary>How it ended.</summary>
/// <param name="Code">The exit code.</param>
/// <param name="Output">Standard output.</param>
/// <param name="Error">Standard error.</param>
public sealed record Answered(int Code, string Output, string Error);
