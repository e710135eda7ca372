namespace LogBook.Application.Data;

/// <summary>A change would have touched records of a customer that the viewer does not see: a mistake of the program.</summary>
public sealed class CustomerWallException(string entity)
    : InvalidOperationException($"The change of a {entity} reaches beyond the customers that the viewer sees.");
