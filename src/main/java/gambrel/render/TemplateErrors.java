package gambrel.render;

import freemarker.core.InvalidReferenceException;
import freemarker.core.ParseException;
import freemarker.template.TemplateException;
import freemarker.template.TemplateNotFoundException;

/** Says in plain words what the template language found wrong. */
final class TemplateErrors {

  private TemplateErrors() {}

  static TemplateProblem explain(ParseException e) {
    return TemplateProblem.at(
        e.getTemplateName(), e.getLineNumber(), e.getColumnNumber(), e.getEditorMessage(), e);
  }

  /** The cause may be a problem of its own, met in an included file. */
  static TemplateProblem explain(String page, TemplateException e) {
    for (Throwable cause = e.getCause(); cause != null; cause = cause.getCause()) {
      if (cause instanceof TemplateProblem problem) {
        return problem;
      }
      if (cause instanceof ParseException wrong) {
        return explain(wrong);
      }
      if (cause instanceof TemplateNotFoundException missing) {
        return TemplateProblem.missingFile(file(page, e), missing.getTemplateName());
      }
    }
    var name = e.getBlamedExpressionString();
    if (e instanceof InvalidReferenceException && name != null) {
      return TemplateProblem.missingName(file(page, e), line(e), column(e), name, e);
    }
    return TemplateProblem.at(file(page, e), line(e), column(e), firstParagraph(e), e);
  }

  private static String file(String page, TemplateException e) {
    return e.getTemplateSourceName() == null ? page : e.getTemplateSourceName();
  }

  private static int line(TemplateException e) {
    return e.getLineNumber() == null ? 0 : e.getLineNumber();
  }

  private static int column(TemplateException e) {
    return e.getColumnNumber() == null ? 0 : e.getColumnNumber();
  }

  private static String firstParagraph(TemplateException e) {
    var message = String.valueOf(e.getMessageWithoutStackTop());
    var end = message.indexOf("\n\n----");
    return (end < 0 ? message : message.substring(0, end)).replaceAll("\\s*\\R\\s*", " ").strip();
  }
}
