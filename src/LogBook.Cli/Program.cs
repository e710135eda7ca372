using System.CommandLine;
using System.Data.Common;
using LogBook.Application.Data;
using LogBook.Cli;

var root = new RootCommand("LogBook: service visits, what they mean, and what is due.");
foreach (var command in Commands.All())
{
    root.Add(command);
}

var parsed = root.Parse(args);
if (parsed.Errors.Count > 0)
{
    foreach (var error in parsed.Errors)
    {
        Console.Error.WriteLine(error.Message);
    }

    return Session.WrongUse;
}

try
{
    return await parsed.InvokeAsync(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
}
catch (OperationCanceledException)
{
    // Ctrl+C: what was not committed is undone by the database.
    Console.Error.WriteLine("Interrupted; nothing half done was kept.");
    return Session.Interrupted;
}
catch (Exception fault) when (fault is NewerSchemaException or DbException or IOException or UnauthorizedAccessException)
{
    // What is outside this program: a file out of reach, a database of a newer version. Everything else is a bug and says where.
    Console.Error.WriteLine($"database: {fault.Message}");
    return Session.Refused;
}
