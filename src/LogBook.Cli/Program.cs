using System.CommandLine;
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

return await parsed.InvokeAsync(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
