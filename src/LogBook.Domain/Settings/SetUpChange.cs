using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Settings;

/// <summary>A record of the set-up that was changed: product or system, before and after.</summary>
/// <param name="On">Day of the change.</param>
/// <param name="ProductBefore">The product before, or null where the system changed.</param>
/// <param name="ProductAfter">The product after.</param>
/// <param name="SystemBefore">The system before, or null where a product changed.</param>
/// <param name="SystemAfter">The system after.</param>
public sealed record SetUpChange(DateOnly On, Product? ProductBefore = null, Product? ProductAfter = null, WaterSystem? SystemBefore = null, WaterSystem? SystemAfter = null);
