// Serves the field app. Everything the technician does happens in the browser; this host only hands out files.
var builder = WebApplication.CreateBuilder(args);
builder.WebHost.UseStaticWebAssets();

var app = builder.Build();
app.Use((context, next) =>
{
    context.Response.Headers.XContentTypeOptions = "nosniff";
    context.Response.Headers["Referrer-Policy"] = "no-referrer";
    // The page's own meta element says the rest; this part counts only as a header.
    context.Response.Headers.ContentSecurityPolicy = "frame-ancestors 'none'";
    return next(context);
});
app.MapStaticAssets();
// Addresses inside the app, such as /visit/…, are the app's own to resolve: they all get the same page, told where its files lie.
app.MapFallback(async context =>
{
    using var page = new StreamReader(app.Environment.WebRootFileProvider.GetFileInfo("index.html").CreateReadStream());
    context.Response.ContentType = "text/html; charset=utf-8";
    context.Response.Headers.CacheControl = "no-cache";
    await context.Response.WriteAsync((await page.ReadToEndAsync()).Replace("<base href=\"./\">", $"<base href=\"{context.Request.PathBase}/\">", StringComparison.Ordinal));
});
await app.RunAsync();
